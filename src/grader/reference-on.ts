import { replay } from '../drafting/replay.ts';
import type { Givens, Sheet } from '../drafting/sheet.ts';
import type { Exercise } from './exercise.ts';

const drawn = new WeakMap<Givens, Map<Exercise, Sheet>>();

/** The reference on a table, drawn once for as long as the table lies there. */
export function referenceOn(exercise: Exercise, givens: Givens): Sheet {
  const here = drawn.get(givens) ?? new Map<Exercise, Sheet>();
  drawn.set(givens, here);
  const sheet = here.get(exercise) ?? replay(givens, exercise.reference);
  here.set(exercise, sheet);
  return sheet;
}
