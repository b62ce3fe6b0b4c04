import type { Name } from '../drafting/step.ts';
import type { Point } from '../geometry/point.ts';
import { type Message, message, type Value } from '../words/message.ts';
import { acrossIt } from './across-it.ts';
import { expectedOf, isRange } from './bounds.ts';
import type { Check, DistanceCheck, ParallelCheck } from './exercise.ts';
import type { JudgedCheck, JudgedTarget } from './judge.ts';
import { leanOf } from './lean.ts';
import type { Reading } from './measures/reading.ts';
import { isNothing } from './nothing.ts';
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

/** Whether what was measured lies on the other side from what was wanted. */
function isAcross(measured: number, wanted: number): boolean {
  return measured * wanted < 0 && !isNothing(measured) && !isNothing(wanted);
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

/** For readings that a range was stated for; only what is read in mm can have one. */
function outOfRange(target: Value, judged: JudgedCheck, reading: Reading): Message {
  const bound = expectedOf(reading, judged.bounds);
  const tooLittle = judged.bounds.least !== null && reading.measured < judged.bounds.least;
  const amounts = { measured: { mm: Math.abs(reading.measured) }, bound: { mm: Math.abs(bound) } };
  const { check } = judged;
  if (check.measure === 'bow' && isNothing(bound)) {
    return message('grader.bow-side', { target, measured: amounts.measured });
  }
  if (check.measure === 'bow' && bound * reading.measured > 0)
    return message('grader.bow-range', { target, ...amounts });
  if (check.measure === 'through')
    return message('grader.through-range', { target, spot: { named: check.point }, ...amounts });
  if (check.measure === 'distance' || check.measure === 'parallel')
    return distanceOutOfRange(target, { named: check.from }, reading.measured, bound);
  const plain = { target, measured: { mm: reading.measured } };
  return tooLittle
    ? message('grader.least', { ...plain, least: { mm: bound } })
    : message('grader.most', { ...plain, most: { mm: bound } });
}

/** Which side is meant is said by a sentence of its own; on it, distances have no sign. */
function distanceOutOfRange(target: Value, from: Value, distance: number, bound: number): Message {
  const values = { target, from, measured: { mm: Math.abs(distance) } };
  const wanted = { mm: Math.abs(bound) };
  if (isAcross(distance, bound)) return message('grader.distance-across', { ...values, expected: wanted });
  const isNear = Math.abs(distance) < Math.abs(bound);
  return message(isNear ? 'grader.from-least' : 'grader.from-most', { ...values, bound: wanted });
}
