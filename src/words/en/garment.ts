import { entry, plain } from '../entry.ts';

/** Figures, blocks, style measures and house rules. Figure files are in mm and degrees, so their errors speak of those. */
export const garment = {
  'garment.figure-shape': entry(['known'], 'A figure is an object with one number a measure: {known}.'),
  'garment.measure-missing': entry(
    ['name', 'measure', 'unit', 'least', 'most'],
    'The {measure} is missing. Give “{name}” in {unit}, between {least} and {most}.',
  ),
  'garment.measure-not-a-number': entry(
    ['name', 'measure', 'unit', 'found'],
    'The {measure}, “{name}”, has to be a plain number, in {unit}; {found} was found.',
  ),
  'garment.measure-range': entry(
    ['name', 'measure', 'unit', 'found', 'least', 'most'],
    'The {measure}, “{name}”, is {found} {unit}. An adult’s lies between {least} and {most} {unit}: look at the tape again, and at the unit.',
  ),
  'garment.measure-unknown': entry(
    ['name', 'known'],
    '“{name}” is not a measure of a figure. The measures are: {known}.',
  ),
  'garment.no-neck-width': entry(
    ['half', 'slope'],
    'No neck width gives half a neckline of {half} with a shoulder that slopes {slope}. Check the neck-base girth and the shoulder slope.',
  ),
  'garment.style-unknown': entry(
    ['name', 'known'],
    '“{name}” is not a style measure. The style measures are: {known}.',
  ),
  'garment.style-not-text': entry(
    ['name', 'measure', 'found'],
    'The {measure}, “{name}”, has to be written with its unit, for example “1 1/4 in” or “32 mm”; {found} was found.',
  ),
  'garment.style-unreadable': entry(
    ['name', 'measure', 'found', 'why'],
    'The {measure}, “{name}”, is “{found}”. {why}',
  ),
  'garment.style-not-a-length': entry(
    ['name', 'measure', 'found'],
    'The {measure}, “{name}”, has to come to a length; “{found}” does not. Write it with its unit, for example “1 1/4 in” or “32 mm”.',
  ),
  'garment.style-range': entry(
    ['name', 'measure', 'found', 'least', 'most'],
    'The {measure}, “{name}”, comes to {found}. It should lie between {least} and {most}.',
  ),
  'garment.rule-unknown': entry(['rule', 'known'], '“{rule}” is not a house rule. The house rules are: {known}.'),
  'garment.choice-unknown': entry(
    ['rule', 'choice', 'known'],
    '“{choice}” is not a choice of the house rule “{rule}”. The choices are: {known}.',
  ),
  'garment.rule-unreadable': entry(
    ['rule', 'choice', 'why'],
    'The house rule “{rule}: {choice}” cannot be worked out. {why}',
  ),

  'name.neck-base': plain('neck-base girth'),
  'name.shoulder': plain('shoulder length'),
  'name.shoulder-slope': plain('shoulder slope'),
  'name.front-waist': plain('front waist length'),
  'name.back-waist': plain('back waist length'),
  'name.front-neck-point': plain('front neck point'),
  'name.back-neck-point': plain('back neck point'),
  'name.overlap-by-rule': plain('overlap by the house rule'),
  'name.stand-by-rule': plain('stand by the house rule'),
  'name.cover-by-rule': plain('fall over stand by the house rule'),
  'name.iron': plain('stretched with the iron, yes 1 or no 0'),
  'name.cloth-turn': plain('turn of the cloth'),
  'name.button': plain('button’s diameter'),
  'name.break-rise-high': plain('high break rise'),
  'name.top-button-rise': plain('height of the top button'),
  'name.break-above-button': plain('height of the break above the button'),
  'name.button-to-edge': plain('button row to edge'),

  'about.neck-base': plain('Round the base of the neck, over the back neck point and the front neck point.'),
  'about.shoulder': plain('From the neck point, where the side of the neck meets the shoulder, to the shoulder tip.'),
  'about.shoulder-slope': plain('How far the shoulder falls away below the level, as an angle.'),
  'about.front-waist': plain(
    'From the front neck point, in the hollow between the collarbones, straight down to the waist.',
  ),
  'about.back-waist': plain('From the back neck point, the bone at the base of the neck, straight down to the waist.'),
  'about.overlap': plain('How far the front edge lies beyond the centre front, so that the two fronts lap and button.'),
  'about.button': plain('The diameter of the button.'),
  'about.button-to-edge': plain(
    'How far inside the front edge the middle of the button row lies on a double-breasted front.',
  ),
  'about.break-rise': plain('How far above the waist the lapel begins to turn back.'),
  'about.break-rise-high': plain('How far above the waist the lapel of a high-buttoned front begins to turn back.'),
  'about.top-button-rise': plain('How far above the waist the top button sits.'),
  'about.break-above-button': plain('How far above the top button the lapel begins to turn back.'),
  'about.stand': plain('The height of the collar at the centre back from the neck seam up to where it turns over.'),
  'about.fall': plain('The depth of the collar at the centre back from where it turns over down to its outer edge.'),
  'about.cloth-turn': plain(
    'What the cloth takes up in turning over at the roll of the collar: more, the thicker it is.',
  ),
  'about.gorge-depth': plain('How far the neck seam runs down from the neck point before it turns into the gorge.'),
  'about.notch-width': plain('How far from the roll line the notch lies, measured square to it.'),
  'about.notch-drop': plain('How far below the collarbone level the notch lies on the body.'),
  'about.lapel-width': plain('How far from the roll line the lapel point lies, measured square to it.'),
  'about.peak-rise': plain(
    'How far a peaked lapel rises above the run of the gorge, measured along the line of its width.',
  ),
  'about.collar-end': plain('The length of the collar’s front edge, from the notch to the collar point.'),

  'garment.rule-in-force': entry(['rule'], 'By the house rule on the order, {rule}.'),
  'rule.overlap-rule.button-half-plus-quarter-inch': plain(
    'the overlap is half the button’s diameter and {1/4 in} more',
  ),
  'rule.overlap-rule.twice-the-button': plain('the overlap is twice the button’s diameter'),
  'rule.overlap-rule.given': plain('the overlap is the one that the order states, whatever the button'),
  'rule.stand-rule.full': plain('the stand point lies the full stand past the neck point'),
  'rule.stand-rule.quarter-inch-less': plain('the stand point lies past the neck point by the stand less {1/4 in}'),
  'rule.cover-rule.eighth-inch-and-turn': plain('the fall exceeds the stand by {1/8 in} and the turn of the cloth'),
  'rule.cover-rule.half-inch': plain('the fall exceeds the stand by {1/2 in}'),
  'rule.cover-rule.five-eighths-inch': plain('the fall exceeds the stand by {5/8 in}'),
  'rule.swing-rule.measured': plain(
    'the collar is swung by the edge ease, measured, at its own width: the cloth is not stretched',
  ),
  'rule.swing-rule.fall-less-stand': plain(
    'the collar is swung by the fall less the stand, at the length of the back neck: the edge is worked with the iron',
  ),

  'house.overlap-rule': plain('How the overlap follows from the button'),
  'house.overlap-rule.button-half-plus-quarter-inch': plain(
    'Half the button’s diameter and {1/4 in} more: the least that the ASDP standard accepts for the button.',
  ),
  'house.overlap-rule.twice-the-button': plain('Twice the button’s diameter.'),
  'house.overlap-rule.given': plain('The overlap stated on the order.'),
  'house.stand-rule': plain('How far past the neck point the roll line meets the shoulder line'),
  'house.stand-rule.full': plain('The full stand.'),
  'house.stand-rule.quarter-inch-less': plain('The stand less {1/4 in}.'),
  'house.cover-rule': plain('How much the fall exceeds the stand'),
  'house.cover-rule.eighth-inch-and-turn': plain('{1/8 in} past the neck seam, and the turn of the cloth.'),
  'house.cover-rule.half-inch': plain('{1/2 in}.'),
  'house.cover-rule.five-eighths-inch': plain('{5/8 in}.'),
  'house.swing-rule': plain('How far the collar is swung'),
  'house.swing-rule.measured': plain(
    'By the edge ease, measured, at the collar’s width: for cloth that is not stretched.',
  ),
  'house.swing-rule.fall-less-stand': plain(
    'By the fall less the stand, at the centre back: for an edge worked with the iron.',
  ),
};
