import { entry, plain } from '../entry.ts';

/** What is wanted and what was found where steps are read, and the words it is said in. */
export const reading = {
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
