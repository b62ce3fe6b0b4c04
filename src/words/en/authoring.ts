import { entry, plain } from '../entry.ts';

/** What the readers of exercise files and hand-in files say: to authors and teachers, about a file they can open and mend. */
export const authoring = {
  'author.not-exercise': entry(
    ['found'],
    'An exercise is a group of fields such as title, brief and targets; {found} was found.',
  ),
  'author.missing': entry(['wanted'], 'This is missing: {wanted}.'),
  'author.no-field': entry(['known'], 'There is no such field here. Take it out; the fields are: {known}.'),
  'author.no-field-meant': entry(
    ['known', 'meant'],
    'There is no such field here. Did you mean “{meant}”? The fields are: {known}.',
  ),
  'author.no-field-comma': plain(
    'There is no such field here. Is this what stands after a decimal comma? A decimal is written with a point: 1.9 cm.',
  ),
  'author.choice': entry(['wanted', 'known', 'found'], 'This should be {wanted}: one of {known}; {found} was found.'),
  'author.choice-meant': entry(
    ['wanted', 'known', 'found', 'meant'],
    'This should be {wanted}: one of {known}; {found} was found. Did you mean “{meant}”?',
  ),

  // Names that have to exist
  'author.unknown': entry(['what', 'name', 'known'], 'No {what} is called “{name}”. There are: {known}.'),
  'author.unknown-meant': entry(['what', 'name', 'meant'], 'No {what} is called “{name}”. Did you mean “{meant}”?'),
  'author.none': entry(['what', 'name'], 'No {what} is called “{name}”, and there is none here that could be meant.'),
  'what.lesson': plain('lesson'),
  'what.person': plain('invented figure'),
  'what.block-object': plain('object of the block'),
  'what.given-mark': plain('given mark'),
  'what.target': plain('target of this exercise'),
  'what.sheet-object': plain('object of the block or the reference'),
  'what.measure': plain('measure of the order'),
  'what.reference-step': plain('step of the reference'),
  'what.house-rule': plain('house rule'),
  'what.rule-in-force': plain('house rule under “house”'),
  'what.house-choice': plain('choice of this house rule'),

  'author.file-ending': entry(
    ['file', 'meant'],
    'The file “{file}” is no exercise: only names that end in .yaml are read. Name it {meant}.yaml.',
  ),
  'author.file-name': entry(
    ['name', 'meant'],
    'The name of an exercise file is lower-case words and numbers joined by hyphens, and this is “{name}”. Name the file {meant}.yaml.',
  ),

  // Targets, reference, checks
  'author.name-strange': entry(
    ['name'],
    '“{name}” is a word that every program keeps for itself, and cannot name an exercise, a target or a misreading. Choose another name.',
  ),
  'author.target-twice': entry(['name'], 'Two targets are called “{name}”. Give each its own name.'),
  'author.target-unchecked': entry(
    ['name'],
    'No check looks at the target “{name}”. Add one under checks, or take the target out.',
  ),
  'author.target-unanswered': entry(
    ['name'],
    'No step of the reference answers the target “{name}”. Write “answers: {name}” on the step that makes it.',
  ),
  'author.answered-twice': entry(
    ['name'],
    'Two steps of the reference answer the target “{name}”. Leave “answers” on one of them.',
  ),
  'author.target-early': entry(
    ['name', 'later'],
    'The reference makes “{name}” from “{later}”, which is listed after it. Put “{later}” first: a target is judged from those before it.',
  ),
  'author.target-kind': entry(
    ['name', 'found', 'wanted'],
    'The reference answers the target “{name}” with {found}, but the target makes {wanted}. Change “makes”, or the step.',
  ),
  'author.check-kind': entry(
    ['measure', 'kinds', 'name', 'found'],
    'The measure “{measure}” reads {kinds}; the target “{name}” makes {found}. Choose another measure.',
  ),
  'author.object-kind': entry(['name', 'found', 'wanted'], '“{name}” is {found}, and {wanted} is wanted here.'),
  'author.range-angle': plain('“least” and “most” are lengths, and this measure reads an angle. Take them out.'),
  'author.range-order': entry(['least', 'most'], '“least” comes to {least}, more than “most”, {most}. Exchange them.'),
  'author.length': entry(['text', 'why'], '“{text}” is not a length that can be worked out here. {why}'),
  'author.not-a-length': entry(
    ['text'],
    '“{text}” does not come to a length. Write one with its unit, such as 1 1/4 in or stand + 6 mm.',
  ),
  'author.angle': entry(['text', 'why'], '“{text}” is not an angle that can be worked out here. {why}'),
  'author.not-an-angle': entry(
    ['text'],
    '“{text}” does not come to an angle. Write one with its unit, such as 40 deg.',
  ),
  'author.check-unread': plain(
    'This check cannot be read on the reference. Look at the objects it names: they must be there, and not run parallel where they have to meet.',
  ),

  'author.worn-nothing': plain(
    'Nothing turns over: “folds” or “turns” has to be a run of points and curves that meet, and reach past the fold line on the side of the front edge.',
  ),

  // Style, house, figure
  'author.style-order': entry(
    ['from', 'value', 'to'],
    '“value” should lie between “from” and “to”; it is {value}, and they are {from} and {to}.',
  ),
  'author.style-about': entry(
    ['name'],
    '“{name}” is a measure of the course, and its words are there already. Leave “about” out.',
  ),
  'author.style-taken': entry(
    ['name'],
    '“{name}” is the name of something else on every table, and cannot name a measure of this exercise. Choose another name.',
  ),
  'author.style-new': entry(['why'], '{why} For a measure of this exercise alone, say under “about” what it is.'),
  'author.style-room': plain(
    '“from”, “value” and “to” are one length, so every order has it, and a number typed for the name would hold on all of them. Leave room on at least one side.',
  ),
  'author.order': entry(['why'], 'The order this exercise starts from cannot be laid on the table. {why}'),

  'author.or': entry(['one', 'other'], '{one} or {other}'),

  // Texts
  'author.text-brace': entry(
    ['near'],
    "The braces of this text cannot be read near “{near}”. Between '{' and '}' stands the name of a measure, in lower case; every brace is closed.",
  ),
  'author.text-tag': entry(
    ['near'],
    'Near “{near}” something reads as a tag. Texts are plain: leave out angle brackets.',
  ),
  'author.text-bare': entry(
    ['name'],
    'This text uses “{name}” in braces, and it can use no values. Write the words themselves.',
  ),
  'author.text-one-unit': entry(
    ['found', 'braced'],
    '“{found}” stands here in one unit, and some readers work in the other. Write it in braces, {braced}, and each reader is told it in their own; or, where the order states this length, its name in braces.',
  ),
  'author.hint-early': entry(
    ['name'],
    'The first hint gives “{name}” away. It says where to look; keep measures for the third.',
  ),
  'author.text-unknown': entry(
    ['name', 'known'],
    'This text uses “{name}” in braces, and there is no such value. There are: {known}.',
  ),
  'author.text-unknown-meant': entry(
    ['name', 'meant'],
    'This text uses “{name}” in braces, and there is no such value. Did you mean “{meant}”?',
  ),

  // Proof by replay
  'author.reference-problem': entry(['why'], 'The reference cannot carry out this step. {why}'),
  'author.unstated': entry(
    ['name'],
    '“{name}” is a style measure that this order does not state. Add it under “style”, with value, from and to.',
  ),
  'author.rule-unstated': entry(
    ['name', 'rule'],
    '“{name}” comes from a house rule that is not in force here, so the learner has no such measure. State the rule under “house”: {rule}.',
  ),
  'author.unshown': entry(
    ['name'],
    'This step is made from “{name}”, which does not lie on the table. Add it under “shows”, or build on something that is there.',
  ),
  'author.by-eye': plain(
    'A mark by eye lies at the same place on every figure, so it is right on one at most. Make it with another tool, from what lies on the table.',
  ),
  'author.typed': entry(
    ['text', 'name'],
    '“{text}” is a number, and stays so on every order; “{name}” comes to the same on this one, and no step uses it. Write the name.',
  ),
  'author.given-answers': plain('A step given on the table is no answer of the learner. Take “answers” out.'),
  'author.given-problem': entry(['why'], 'This step, given on the table, cannot be carried out. {why}'),
  'author.misreading-twice': entry(['id'], 'Two misreadings are called “{id}”. Give each its own name.'),
  'author.misreading-nothing': plain(
    'A misreading has to replace at least one step of the reference. Write it under “instead”.',
  ),
  'author.misreading-taken': entry(
    ['name'],
    '“{name}” is already the name of a step of the reference. Under “first” give new marks new names.',
  ),
  'author.misreading-new': entry(
    ['why'],
    '{why} A step under “instead” has the name of the one whose place it takes; what only the wrong way needs goes under “first”.',
  ),
  'author.misreading-extra': entry(
    ['name'],
    'The step “{name}” of the reference answers no target, so the one in its place answers none. Take “answers” out.',
  ),
  'author.misreading-answers': entry(
    ['name', 'target'],
    'The step “{name}” replaces the one that answers “{target}”, so it has to answer it too. Write “answers: {target}” on it.',
  ),
  'author.misreading-empty': entry(
    ['target', 'why'],
    'Done this way, nothing comes out for the target “{target}”. {why}',
  ),
  'author.misreading-right': entry(
    ['target', 'measure', 'off', 'tolerance'],
    'Done this way, the target “{target}” still comes out right: of its checks “{measure}” is off most, by {off} on one of the orders tried, and {tolerance} is allowed at the most lenient. Replace a step that matters more, add a check that sees the difference, choose a finer tolerance, or narrow the ranges of the style.',
  ),
  'author.no-why': plain('Check what its steps use.'),
};
