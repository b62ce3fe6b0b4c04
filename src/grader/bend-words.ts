import { type Message, message, type Value } from '../words/message.ts';
import type { BendCheck } from './exercise.ts';
import { STRETCH } from './measures/fairness.ts';

/** What is said of a curve that turns more than it should, or than is left to taste; both in degrees. */
export function bendWords(target: Value, { over }: BendCheck, measured: number, most: number): Message {
  const values = { target, measured: { radians: radians(measured) }, bound: { radians: radians(most) } };
  return over === 'whole'
    ? message('grader.bend-whole', values)
    : message('grader.bend-stretch', { ...values, stretch: { mm: STRETCH } });
}

function radians(degrees: number): number {
  return (degrees * Math.PI) / 180;
}
