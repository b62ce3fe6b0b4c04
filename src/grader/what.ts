import type { Name } from '../drafting/step.ts';
import type { Point } from '../geometry/point.ts';
import { type Message, message, type Value } from '../words/message.ts';
import { acrossIt } from './across-it.ts';
import { bendWords } from './bend-words.ts';
import { isRange } from './bounds.ts';
import type { Check, DistanceCheck, ParallelCheck } from './exercise.ts';
import type { JudgedCheck, JudgedTarget } from './judge.ts';
import { leanOf } from './lean.ts';
import type { Reading } from './measures/reading.ts';
import { isNothing } from './nothing.ts';
import { isAcross } from './opposite.ts';
import { outOfRange } from './out-of-range.ts';
import { wayFrom, wayOf } from './way.ts';

/** The sentence that says what is off at a target, by how much and which way. */
export function whatIsOff(judged: JudgedTarget, one: JudgedCheck): Message {
  const { check, reading, bounds } = one;
  const target: Value = { named: judged.target.name };
  if (reading === null) return acrossIt(judged, check);
  if (isRange(bounds)) return outOfRange(target, one, reading);
  return reading.displacement === null
    ? amountOff(judged, one, reading)
    : wayOff(target, check, reading, reading.displacement);
}

/** For readings that have a direction on the sheet. */
function wayOff(target: Value, check: Check, reading: Reading, displacement: Point): Message {
  const way = { said: wayOf(displacement) };
  switch (check.measure) {
    case 'distance':
    case 'parallel':
      return distanceOff(target, check, reading, displacement);
    case 'line':
      return message('grader.line', { target, spot: { named: reading.spot ?? check.between[0] }, way });
    case 'level':
      return message('grader.level', { target, way });
    case 'through':
      return message('grader.through', { target, spot: { named: check.point }, way });
    case 'shape':
      return message('grader.shape', { target, off: { off: reading.measured } });
    default:
      return message('grader.position', { target, way });
  }
}

function distanceOff(
  target: Value,
  check: DistanceCheck | ParallelCheck,
  reading: Reading,
  displacement: Point,
): Message {
  const from = { named: check.from };
  if (check.measure === 'distance' && isNothing(reading.expected)) {
    return message('grader.distance-on', { target, from, way: { said: wayOf(displacement) } });
  }
  const measured = { mm: Math.abs(reading.measured) };
  const expected = { mm: Math.abs(reading.expected) };
  if (isAcross(reading.measured, reading.expected)) {
    return message('grader.distance-across', { target, from, measured, expected });
  }
  const isBeyond = Math.abs(reading.measured) > Math.abs(reading.expected);
  const way = { said: wayFrom(displacement, isBeyond, apart(reading)) };
  return check.measure === 'parallel' && reading.spot !== null && typeof check.at !== 'string'
    ? message('grader.distance-at', { target, from, spot: { named: reading.spot }, measured, expected, way })
    : message('grader.distance', { target, from, measured, expected, way });
}

/** How far off a reading is, so that it agrees with the two figures shown beside it. */
function apart({ measured, expected, unit }: Reading): Value {
  const shown = (value: number): number => (unit === 'mm' ? value : (value * Math.PI) / 180);
  return { apart: [shown(measured), shown(expected)], unit: unit === 'mm' ? 'mm' : 'radians' };
}

/** For readings that are an amount and no more. */
function amountOff(judged: JudgedTarget, { check, off: size }: JudgedCheck, reading: Reading): Message {
  const target: Value = { named: judged.target.name };
  const tooMuch = reading.measured > reading.expected;
  const measured = { mm: Math.abs(reading.measured) };
  const expected = { mm: Math.abs(reading.expected) };
  const off = apart(reading);
  switch (check.measure) {
    case 'distance':
      // On the mark itself, with no way to have gone.
      return message('grader.distance-none', { target, from: { named: check.from }, expected });
    case 'squareness':
      return angleOff(judged, check.to, reading, size ?? 0);
    case 'smoothness':
      return message('grader.smoothness', { target, off: degrees(size ?? 0) });
    case 'walk':
      return message(tooMuch ? 'grader.walk-over' : 'grader.walk-short', { target, measured, expected, off });
    case 'bow':
      return message('grader.bow', { target, measured, expected });
    case 'angle':
      return message(tooMuch ? 'grader.angle-wide' : 'grader.angle-narrow', {
        target,
        measured: degrees(Math.abs(reading.measured)),
        expected: degrees(Math.abs(reading.expected)),
        off,
      });
    case 'bend':
      return bendWords(target, check, reading.measured, reading.expected);
    case 'inflection':
      if (!tooMuch) return message('grader.inflection', { target, measured, expected });
      return wavering(target, reading, measured, off);
    default:
      return message(tooMuch ? 'grader.too-long' : 'grader.too-short', { target, measured, expected, off });
  }
}

/** Where no bend back is wanted, all of it is too much, and one number says it. */
function wavering(target: Value, { expected }: Reading, measured: Value, off: Value): Message {
  return isNothing(expected)
    ? message('grader.wavers-alone', { target, measured })
    : message('grader.wavers', { target, measured, off });
}

function degrees(value: number): Value {
  return { radians: (value * Math.PI) / 180 };
}

/** Square and parallel have names of their own; any other angle is given as it is. */
function angleOff({ target: { name }, right }: JudgedTarget, to: Name, reading: Reading, size: number): Message {
  const values = { target: { named: name }, to: { named: to } };
  const off = degrees(size);
  const lean = leanOf(reading, right);
  const leaning = lean === null ? null : { ...values, off, lean: { said: lean } };
  if (isNothing(reading.expected - 90))
    return leaning ? message('grader.square-leaning', leaning) : message('grader.square', { ...values, off });
  if (isNothing(Math.min(reading.expected, 180 - reading.expected)))
    return leaning ? message('grader.along-leaning', leaning) : message('grader.along', { ...values, off });
  // An angle between lines is told by the smaller of the two it may be.
  const told = (angle: number): Value => degrees(reading.expected > 90 ? 180 - angle : angle);
  const angles = { measured: told(reading.measured), expected: told(reading.expected) };
  return message('grader.angle', { ...values, ...angles });
}
