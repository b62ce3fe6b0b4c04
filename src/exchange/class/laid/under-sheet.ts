import type { Givens, Sheet } from '../../../drafting/sheet.ts';
import type { Name } from '../../../drafting/step.ts';
import type { Exercise } from '../../../grader/exercise.ts';
import { layOut } from '../../../grader/lay-out.ts';
import { shapeNamed } from '../../../grader/measures/lookup.ts';
import type { Order } from '../../../grader/order.ts';
import { referenceOn } from '../../../grader/standing.ts';
import { type Footing, footingOf } from './footing.ts';

/** The sheet over which a class is laid: the block of one figure, and where its right answers lie. */
export interface UnderSheet {
  readonly givens: Givens;
  readonly reference: Sheet;
  /** Target to the footing of its right answer; without those that have no place on a sheet. */
  readonly footings: ReadonlyMap<Name, Footing>;
}

/** The sheet of an order, for a class to be laid over; null where it cannot be laid on the table. */
export function underSheetOf(exercise: Exercise, order: Order): UnderSheet | null {
  const laid = layOut(exercise, order);
  if (!laid.ok) return null;
  const reference = referenceOn(exercise, laid.givens);
  const footings = exercise.targets.flatMap(({ name }): [Name, Footing][] => {
    const right = shapeNamed(reference, name);
    const footing = right && footingOf({ exercise, target: name, right, reference, own: reference });
    return footing ? [[name, footing]] : [];
  });
  return { givens: laid.givens, reference, footings: new Map(footings) };
}
