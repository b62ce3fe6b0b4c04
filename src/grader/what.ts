import type { Name } from '../drafting/step.ts';
import { type Message, message, type Value } from '../words/message.ts';
import { expectedOf, isRange } from './bounds.ts';
import type { JudgedCheck } from './judge.ts';
import type { Reading } from './measures/reading.ts';
import { wayOf } from './way.ts';

/** A length counts as nothing below this, mm: less than the finest tolerance a teacher can choose. */
const NOTHING = 0.5;

/** The sentence that says what is off, by how much and which way. */
export function whatIsOff(name: Name, judged: JudgedCheck): Message {
  const { reading, check } = judged;
  const target: Value = { named: name };
  if (reading === null) return message('grader.unreadable', { target });
  if (isRange(judged.bounds)) return outOfRange(target, judged, reading);
  const size = { mm: Math.abs(reading.measured) };
  const expected = { mm: Math.abs(reading.expected) };
  const off = { mm: judged.off ?? 0 };
  const way = reading.displacement === null ? message('grader.no-way') : wayOf(reading.displacement);
  const said = { said: way };
  switch (check.measure) {
    case 'position':
      return message('grader.position', { target, way: said });
    case 'distance': {
      const from = { named: check.from };
      return Math.abs(reading.expected) < NOTHING
        ? message('grader.distance-on', { target, from, way: said })
        : message('grader.distance', { target, from, measured: size, expected, way: said });
    }
    case 'line':
      return message('grader.line', { target, spot: { named: reading.spot ?? check.between[0] }, way: said });
    case 'parallel':
      return message('grader.parallel', { target, from: { named: check.from }, measured: size, expected, way: said });
    case 'squareness':
      return angleOff(target, check.to, reading, judged.off ?? 0);
    case 'level':
      return message('grader.level', { target, way: said });
    case 'length':
      return reading.measured > reading.expected
        ? message('grader.too-long', { target, measured: size, expected, off })
        : message('grader.too-short', { target, measured: size, expected, off });
    case 'walk':
      return reading.measured > reading.expected
        ? message('grader.walk-over', { target, measured: size, expected, off })
        : message('grader.walk-short', { target, measured: size, expected, off });
    case 'bow':
      return message('grader.bow', { target, measured: size, expected });
    case 'shape':
      return message('grader.shape', { target, off });
    case 'smoothness':
      return message('grader.smoothness', { target, off: degrees(judged.off ?? 0) });
    case 'inflection':
      return message('grader.inflection', { target, measured: size, expected });
  }
}

function degrees(value: number): Value {
  return { radians: (value * Math.PI) / 180 };
}

/** Square and parallel have names of their own; any other angle is given as it is. */
function angleOff(target: Value, to: Name, reading: Reading, off: number): Message {
  const named = { named: to };
  if (Math.abs(reading.expected - 90) < NOTHING) return message('grader.square', { target, to: named, off: degrees(off) });
  if (Math.min(reading.expected, 180 - reading.expected) < NOTHING) {
    return message('grader.along', { target, to: named, off: degrees(off) });
  }
  const angles = { measured: degrees(reading.measured), expected: degrees(reading.expected) };
  return message('grader.angle', { target, to: named, ...angles });
}

function outOfRange(target: Value, judged: JudgedCheck, reading: Reading): Message {
  const shown = (value: number): Value => (reading.unit === 'mm' ? { mm: value } : degrees(value));
  const measured = shown(reading.measured);
  const bound = shown(expectedOf(reading, judged.bounds));
  const tooLittle = judged.bounds.least !== null && reading.measured < judged.bounds.least;
  return tooLittle
    ? message('grader.least', { target, measured, least: bound })
    : message('grader.most', { target, measured, most: bound });
}
