import { entry, plain } from '../entry.ts';

/** Why an amount that was typed cannot be worked out, and what to write instead. */
export const expressions = {
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
  'expression.word': entry(
    ['word', 'sign', 'written'],
    '“{word}” is written as a sign here, {sign}: {written}, for example.',
  ),
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
  'expression.bare-figure': entry(
    ['text'],
    '“{text}” is a bare number, and a length is wanted. Give it a unit: {text} cm or {text} in.',
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
};
