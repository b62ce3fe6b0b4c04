import type { Shape } from '../drafting/shape.ts';
import type { Check, MeasureName } from './exercise.ts';

/** Measures that hold a shape of a kind against the right one, and against nothing else. */
const againstRight: Readonly<Partial<Record<MeasureName, Shape['kind']>>> = {
  position: 'point',
  shape: 'curve',
  inflection: 'curve',
  angle: 'angle',
};

/** Whether a check holds for an answer that is the right one itself, without a reading: where no range is stated, it is off by nothing. */
export function holdsOfItself({ measure, least, most }: Check, answer: Shape): boolean {
  return least === undefined && most === undefined && againstRight[measure] === answer.kind;
}
