import { type Message, message, type Value } from '../words/message.ts';
import { bendWords } from './bend-words.ts';
import { expectedOf } from './bounds.ts';
import type { JudgedCheck } from './judge.ts';
import type { Reading } from './measures/reading.ts';
import { isNothing } from './nothing.ts';
import { isAcross } from './opposite.ts';

/** The sentence for a reading outside the range that was stated for it. */
export function outOfRange(target: Value, judged: JudgedCheck, reading: Reading): Message {
  const bound = expectedOf(reading, judged.bounds);
  const tooLittle = judged.bounds.least !== null && reading.measured < judged.bounds.least;
  const { check } = judged;
  if (check.measure === 'distance' || check.measure === 'parallel')
    return distanceOutOfRange(target, { named: check.from }, reading.measured, bound);
  const strays = straying(target, judged, reading, bound);
  if (strays !== null && !tooLittle) return strays;
  const bowed = check.measure === 'bow' ? bowing(target, reading, bound) : null;
  if (bowed !== null) return bowed;
  const plain = { target, measured: { mm: reading.measured } };
  return tooLittle
    ? message('grader.least', { ...plain, least: { stated: bound } })
    : message('grader.most', { ...plain, most: { stated: bound } });
}

/** Of a curve that strays further, or less quietly, than it may. */
function straying(target: Value, { check }: JudgedCheck, reading: Reading, most: number): Message | null {
  const values = { target, measured: { mm: reading.measured }, bound: { stated: most } };
  switch (check.measure) {
    case 'shape':
      return message('grader.shape-range', values);
    case 'inflection':
      return message('grader.wavers-range', values);
    case 'bend':
      return bendWords(target, check, reading.measured, most);
    case 'through':
      return message('grader.through-range', { ...values, spot: { named: check.point } });
    default:
      return null;
  }
}

/** Of a curve that bows too far, or to the side where it should not. */
function bowing(target: Value, reading: Reading, bound: number): Message | null {
  const measured = { mm: Math.abs(reading.measured) };
  if (isNothing(bound)) return message('grader.bow-side', { target, measured });
  if (bound * reading.measured < 0) return null;
  return message('grader.bow-range', { target, measured, bound: { stated: Math.abs(bound) } });
}

/** Which side is meant is said by a sentence of its own; on it, distances have no sign. */
function distanceOutOfRange(target: Value, from: Value, distance: number, bound: number): Message {
  const values = { target, from, measured: { mm: Math.abs(distance) } };
  const wanted = { stated: Math.abs(bound) };
  if (isAcross(distance, bound)) return message('grader.distance-across', { ...values, expected: wanted });
  const isNear = Math.abs(distance) < Math.abs(bound);
  return message(isNear ? 'grader.from-least' : 'grader.from-most', { ...values, bound: wanted });
}
