import { entry, plain } from '../entry.ts';

/** Why a step could not be carried out, and what to do: shown beside the step. */
export const problems = {
  // Expressions
  'expression.empty': plain('Nothing is written here. Write an amount, such as 3.2 cm, 1 1/4 in or stand + 6 mm.'),
  'expression.too-long': entry(
    ['limit'],
    'This expression is longer than {limit} characters. Tape a part of it first and use its name.',
  ),
  'expression.character': entry(
    ['found'],
    '“{found}” has no meaning in an expression. Use numbers with units, names, + - * / and brackets.',
  ),
  'expression.comma': entry(['written'], 'Write a decimal with a point, not a comma: {written}.'),
  'expression.point': plain('A point stands between figures, as in 3.2 cm. Take this one out.'),
  'expression.times': entry(['written'], 'Times is written with *, and not with x: {written}, for example.'),
  'expression.unit-spelt': entry(['found', 'written'], '“{found}” is not how a unit is written here. Write {written}.'),
  'expression.stops': entry(['after'], 'The expression stops after “{after}”. Write a number or a name there.'),
  'expression.no-value': entry(
    ['found'],
    'Before “{found}” a number or a name is missing. Write one there, or take the sign out.',
  ),
  'expression.no-sign': entry(
    ['before', 'after'],
    'Between “{before}” and “{after}” a sign is missing. Write +, -, * or / between them.',
  ),
  'expression.bracket-open': plain('A bracket is opened and never closed. Write ) where it ends.'),
  'expression.bracket-close': plain(
    'A bracket is closed that was never opened. Take out the ) or write the ( it belongs to.',
  ),
  'expression.two-names': entry(
    ['words', 'joined'],
    '“{words}” reads as two names. If it is one, write it with a hyphen: {joined}. If not, write a sign between them.',
  ),
  'expression.unit-alone': entry(['unit'], 'The unit {unit} has no number before it. Write one: 5 {unit}.'),
  'expression.unit-after-name': entry(['name', 'unit'], '“{name}” carries its own unit. Take out the {unit} after it.'),
  'expression.space-minus': entry(
    ['written'],
    'A hyphen inside a word belongs to its name. If you mean less, write spaces round it: {written}.',
  ),
  'expression.unknown': entry(
    ['name'],
    'No measure and no taped length is called “{name}”. Choose one from the list, or tape the length first.',
  ),
  'expression.unknown-meant': entry(
    ['name', 'meant'],
    'No measure and no taped length is called “{name}”. Did you mean “{meant}”?',
  ),
  'expression.unknown-minus': entry(
    ['name', 'written'],
    'No measure and no taped length is called “{name}”. If you mean less, write spaces round the minus: {written}.',
  ),
  'expression.zero': entry(
    ['text'],
    '“{text}” divides by nothing. Write a number or a name that is not zero under the line.',
  ),
  'expression.too-large': plain('This comes to a number too large to draw. Check the figures in it.'),
  'expression.unlike': entry(
    ['text'],
    '“{text}” puts a length and an angle together. Only like amounts can be added or taken away.',
  ),
  'expression.no-unit': entry(
    ['text', 'dimension'],
    '“{text}” has no unit. Say what it is: {dimension, select, angle {22.5 deg} other {6 mm, 0.6 cm or 1/4 in}}, for example.',
  ),
  'expression.product': entry(
    ['dimension'],
    '{dimension, select, angle {An angle times an angle is no angle} other {A length times a length is an area, not a length}}. Multiply by a plain number.',
  ),
  'expression.quotient': entry(
    ['text', 'dimension'],
    '“{text}” divides by {dimension, select, angle {an angle} other {a length}}, and what comes out is neither a length nor an angle. Divide by a plain number.',
  ),
  'expression.bare-length': entry(
    ['text'],
    '“{text}” is a bare number, and a length is wanted. Give it a unit: 6 mm, 0.6 cm or 1/4 in, for example.',
  ),
  'expression.bare-angle': entry(
    ['text'],
    '“{text}” is a bare number, and an angle is wanted. Give it a unit: 22.5 deg, for example.',
  ),
  'expression.wanted': entry(
    ['text', 'found', 'wanted'],
    '“{text}” is {found, select, length {a length} angle {an angle} other {a plain number}}, and {wanted, select, length {a length} angle {an angle} other {a plain number}} is wanted here.',
  ),
  'expression.not-length': entry(
    ['name', 'kind'],
    '“{name}” is {kind}, not a length. Tape it first, then write the name of the length.',
  ),

  // Names of steps
  'problem.not-a-step': plain('This is not a step that can be read. Erase it and draw it again.'),
  'problem.verb-missing': plain('This step does not say which tool it is drawn with. Erase it and draw it again.'),
  'problem.name-missing': plain('This step has no name. Give it one, such as roll-line or mark-2.'),
  'problem.unknown-verb': entry(
    ['verb'],
    'No tool is called “{verb}”. Erase the step and draw it with a tool of the table.',
  ),
  'problem.name-form': entry(
    ['name'],
    '“{name}” cannot be a name. Use lower-case words and numbers joined by hyphens, beginning with a letter: roll-line, mark-2.',
  ),
  'problem.name-reserved': entry(
    ['name'],
    '“{name}” is a word of the drafting language and cannot name an object. Choose another name.',
  ),
  'problem.name-given': entry(['name'], '“{name}” is already the name of something given. Choose another name.'),
  'problem.name-twice': entry(
    ['name', 'step'],
    '“{name}” is already the name of what step {step} makes. Choose another name.',
  ),

  // Blanks and what fills them
  'problem.blank': plain('A blank of this step is empty. Fill it by pointing, choosing or typing.'),
  'problem.unreadable': entry(['wanted'], 'What stands in this blank cannot be read. It takes {wanted}.'),
  'problem.too-few': entry(['wanted'], 'Too few are listed here. This blank takes {wanted}.'),
  'problem.unknown': entry(['name'], 'Nothing on the sheet is called “{name}”. Choose something that is there.'),
  'problem.unknown-meant': entry(['name', 'meant'], 'Nothing on the sheet is called “{name}”. Did you mean “{meant}”?'),
  'problem.unknown-way': entry(
    ['name'],
    '“{name}” is no direction, and nothing on the sheet is called so. Directions are left, right, up and down; a point will do too.',
  ),
  'problem.not-there': entry(
    ['name', 'step'],
    '{name} is not there because step {step} could not be carried out. Mend step {step} first.',
  ),
  'problem.made-later': entry(
    ['name', 'step'],
    '{name} is made only in step {step}. Use something that is there before this step.',
  ),
  'problem.itself': entry(
    ['name'],
    '{name} is what this step makes, so the step cannot use it. Choose something that is there before it.',
  ),
  'problem.kind': entry(['name', 'found', 'wanted'], '{name} is {found}, and {wanted} is wanted here.'),
  'problem.measure': entry(
    ['name', 'wanted'],
    '{name} is a measure, with no place on the sheet, and {wanted} is wanted here.',
  ),
  'problem.ends': entry(
    ['name'],
    '{name} is a line without ends. Say from which point to which point it is to be taken.',
  ),
  'problem.one-end': plain(
    'One end is given and the other is not. Give both points, or neither to take the whole curve.',
  ),

  // Directions
  'problem.no-sense': entry(
    ['name', 'way'],
    '{name} does not run {way} at all, so that does not say which way to go. Choose another direction, or a point to go toward.',
  ),
  'problem.no-side': entry(
    ['name', 'way'],
    '{name} has no side that lies {way}: it runs that way itself. Choose another direction, or a point on the side you mean.',
  ),
  'problem.toward-here': entry(
    ['name', 'from'],
    '{name} lies where {from} does on this line, so it does not say which way to go. Choose a point further along, or a direction.',
  ),
  'problem.side-on': entry(
    ['name', 'on'],
    '{name} lies on {on} itself, so it does not say which side. Choose a point to one side, or a direction.',
  ),
  'problem.side-beyond': entry(
    ['name', 'of'],
    '{name} lies straight beyond the end of {of}, so it does not say which side. Choose a point to one side, or a direction.',
  ),
  'problem.several': entry(['count'], 'There are {count} such places. Say which one: a direction, or a point near it.'),
  'problem.tie': entry(
    ['way'],
    'Two such places lie equally far {way}. Choose another direction, or a point near the one you mean.',
  ),
  'problem.tie-point': entry(
    ['name'],
    'Two such places lie equally far from {name}. Choose a direction, or another point.',
  ),
  'problem.tie-place': plain('Two such places lie equally far from there. Choose a direction, or a point.'),

  // Geometry
  'problem.parallel': entry(
    ['one', 'other'],
    '{one} and {other} run parallel, so they do not cross. Choose lines that lean toward each other.',
  ),
  'problem.no-cross': entry(
    ['one', 'other'],
    '{one} and {other} do not cross. A curve ends where it ends: lengthen it, or choose another.',
  ),
  'problem.itself-cross': entry(['one'], '{one} is named twice. Choose two different lines or curves.'),
  'problem.out-of-reach': entry(
    ['radius', 'about', 'on', 'gap'],
    'An arc of {radius} about {about} does not cut {on}, which is {gap} away at its nearest. Open the compass wider, or choose another line.',
  ),
  'problem.out-of-reach-hair': entry(
    ['radius', 'about', 'on'],
    'An arc of {radius} about {about} misses {on} by a hair. Open the compass a little wider, or take the foot of the square from {about}.',
  ),
  'problem.too-wide': entry(
    ['radius', 'about', 'on'],
    'An arc of {radius} about {about} passes round {on} without cutting it. Close the compass a little, or choose another line.',
  ),
  'problem.no-radius': entry(
    ['radius'],
    'A compass opened to {radius} draws nothing. Give a radius greater than zero.',
  ),
  'problem.off-end': entry(
    ['distance', 'on', 'left'],
    '{distance} runs off the end of {on}, which has {left} left that way. Give less, or choose the other way.',
  ),
  'problem.off-end-hair': entry(
    ['distance', 'on'],
    '{distance} runs off the end of {on} by a hair. Take the point at its end, or give a little less.',
  ),
  'problem.same-place': entry(
    ['one', 'other'],
    '{one} and {other} lie in the same place, so no line runs through them. Choose two points apart.',
  ),
  'problem.points-meet': entry(
    ['one', 'other'],
    'The curve cannot pass from {one} to {other}: they lie in the same place. Leave one of them out.',
  ),
  'problem.doubles-back': entry(
    ['at'],
    'At {at} the curve would turn straight back, and cannot tell which way to bend. Give it another point between.',
  ),
  'problem.heading-square': entry(
    ['at'],
    'At {at} the direction asked for is square to the way to the next point, so it cannot tell which way to set off. Put another point between, or ask for another direction.',
  ),
  'problem.shape-count': entry(
    ['points', 'entries'],
    'The curve has {points} points and {entries} handle settings. Clear the settings, or give one for each point.',
  ),
  'problem.no-parallel': entry(
    ['of', 'distance'],
    'No curve runs parallel to {of} at {distance} on that side: the curve is hollower than that. Give less, or take the other side.',
  ),
  'problem.seam-empty': plain('This run has no length. Join at least two points that lie apart, or a curve.'),
  'problem.seam-gap': entry(
    ['one', 'other', 'gap'],
    '{one} and {other} do not meet: they are {gap} apart where they should join. Join them by points, or draw them to meet.',
  ),
  'problem.seam-gap-hair': entry(
    ['one', 'other'],
    '{one} and {other} miss each other by a hair where they should join. End both at one point.',
  ),
  'problem.part-empty': entry(
    ['along'],
    'The part of {along} taken here has no length. Choose two points that lie apart on it.',
  ),
  'problem.below-zero': entry(
    ['length'],
    'The tape cannot be set to {length}: it measures from nothing upward. Exchange what is taken from what, or check the lengths.',
  ),
  'problem.swing-radius': entry(
    ['at'],
    'A swing measured at {at} from the pin has no angle. Give a distance greater than zero.',
  ),
  'problem.off-sheet': plain(
    'This would lie more than a hundred metres away. Check the distances, or lines that hardly lean toward each other.',
  ),
  'problem.too-much-work': plain(
    'This takes more working out than a draft may ask for: its curves go through too many points, or cross each other too often. Draw them through fewer points, and take out steps that nothing needs.',
  ),
  'problem.too-many': entry(
    ['limit'],
    'This curve would be made of more than {limit} pieces. Draw it afresh through fewer points.',
  ),
  'problem.too-long-list': entry(['limit'], 'More than {limit} are listed here. Divide the step in two.'),

  // Kinds of object, as they stand in a sentence
  'a.point': plain('a point'),
  'a.line': plain('a line'),
  'a.curve': plain('a curve'),
  'a.length': plain('a length'),
  'a.angle': plain('an angle'),
  'a.line-or-curve': plain('a line or a curve'),
  'a.drawn': plain('a point, a line or a curve'),

  // What a blank takes, where it is not an object
  'wanted.length': plain('a length, such as 3.2 cm or stand + 6 mm'),
  'wanted.angle': plain('an angle, such as 22.5 deg'),
  'wanted.number': plain('a plain number, such as 1/3'),
  'wanted.toward': plain('left, right, up, down or the name of a point'),
  'wanted.near': plain('left, right, up, down, the name of a point, or a place'),
  'wanted.turn': plain('clockwise or anticlockwise'),
  'wanted.place': plain('a place: two numbers in millimetres, across and up, none beyond 100000'),
  'wanted.heading': plain('a line to run along or square to'),
  'wanted.shape': plain('handle settings: for each point a turn and two handle lengths, or nothing'),
  'wanted.points': plain('a list of two or more points'),
  'wanted.run': plain('a list of points, curves and parts of curves'),

  // Ways across the sheet, inside a sentence
  'way.left': plain('to the left'),
  'way.right': plain('to the right'),
  'way.up': plain('upward'),
  'way.down': plain('downward'),

  // Reading steps from a file
  'read.step': entry(['step'], 'Step {step}'),
  'read.step-named': entry(['step', 'name'], 'Step {step} ({name})'),
  'read.in-step': entry(['step', 'said'], '{step}: {said}'),
  'read.in-field': entry(['step', 'field', 'said'], '{step}, “{field}”: {said}'),
  'read.not-list': entry(
    ['found'],
    'A draft is a list of steps, and {found} was found. Put the steps between [ and ].',
  ),
  'read.too-many': entry(
    ['count', 'limit'],
    'The draft has {count} steps, and no more than {limit} are read. Take out steps that nothing needs.',
  ),
  'read.not-step': entry(['found'], 'A step is an object with a verb and a name, and {found} was found.'),
  'read.verb': entry(
    ['found', 'verbs'],
    'A verb of the language is expected, and {found} was found. The verbs are {verbs}.',
  ),
  'read.verb-meant': entry(
    ['found', 'meant'],
    'A verb of the language is expected, and {found} was found. Did you mean “{meant}”?',
  ),
  'read.missing': entry(['wanted'], 'This is missing. It takes {wanted}.'),
  'read.wrong': entry(['wanted', 'found'], 'This should be {wanted}; {found} was found.'),
  'read.unseen': entry(['found'], 'This has characters in it that cannot be seen: “{found}”. Write it again by hand.'),
  'read.unknown': plain('There is no such field here. Take it out.'),
  'read.unknown-in': entry(
    ['verb', 'fields'],
    'A {verb} step has no such field. Take it out; its fields are {fields}.',
  ),
  'read.unknown-meant': entry(['meant'], 'There is no such field here. Did you mean “{meant}”?'),
  'read.other-form': entry(
    ['verb', 'fields', 'others'],
    'This does not go with the other fields. A {verb} step has either “{fields}” or “{others}”.',
  ),
  'found.nothing': plain('nothing'),
  'found.list': entry(['count'], 'a list of {count}'),
  'found.object': plain('a group of fields'),
  'found.number': entry(['text'], 'the number {text}'),
  'found.text': entry(['text'], '“{text}”'),
  'wanted.name': plain('a name, such as roll-line'),
  'wanted.target': plain('the name of a target, such as break-point'),
  'wanted.run-entry': plain('a point, a curve, or a part of one'),
  'wanted.passing': plain('a turn and two handle lengths, or null'),
  'wanted.handle': plain('a handle length as a fraction of the chord, from 0.01 to 10'),
  'wanted.turn-angle': plain('an angle in radians, a full turn at most'),
};
