import { middleOf } from '../../../exchange/class/laid/middle.ts';
import { type UnderSheet, underSheetOf } from '../../../exchange/class/laid/under-sheet.ts';
import { orderOf } from '../../../exchange/order-from.ts';
import type { Exercise } from '../../../grader/exercise.ts';
import type { Sound } from '../intake/taken.ts';

/** The sheet over which the work of a class on an exercise is laid: that of its middle figure. Null where there is none. */
export function classSheet(exercise: Exercise, pieces: readonly Sound[]): UnderSheet | null {
  const middle = middleOf(pieces.map((piece) => ({ figure: piece.sketch.figure, piece })));
  if (middle === null) return null;
  const made = orderOf(middle.piece.handIn.order, exercise);
  return made.ok ? underSheetOf(exercise, made.order) : null;
}
