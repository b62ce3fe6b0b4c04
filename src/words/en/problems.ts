import { entry, plain } from '../entry.ts';

/** Why a step could not be carried out, and what to do: shown beside the step. */
export const problems = {
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
    '“{name}” cannot be a name. Use words and numbers, beginning with a letter, such as roll line or mark 2. In a file they are in small letters and joined by hyphens: roll-line.',
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
  'problem.ends-join': entry(
    ['name'],
    '{name} is a line without ends. Name the marks between which it runs: two in a row are joined straight.',
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
    '{name} has no side that lies {way}: it runs that way itself. Choose another direction, a point on the side you mean, or another line.',
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
  'problem.seam-midway': entry(
    ['mark', 'along'],
    '{mark} lies on {along}, but not at its end. To take a part of it, name the two marks it runs between: one before {along}, one after.',
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
};
