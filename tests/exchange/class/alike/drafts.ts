import type { Step } from '../../../../src/drafting/step.ts';
import { freeHandOf } from '../../../../src/exchange/class/alike/free-hand.ts';
import type { ClassWork } from '../../../../src/exchange/class/class-work.ts';
import { sampleFigure } from '../../../../src/garment/sample.ts';
import type { Exercise } from '../../../../src/grader/exercise.ts';
import { orderFor } from '../../../../src/grader/order-for.ts';
import { rightOverlap } from '../../hand-ins.ts';

/** A student's draft on the figure of this seed, as a class keeps it. */
export function draftOf(exercise: Exercise, student: string, seed: string, steps: readonly Step[]): ClassWork {
  const order = { ...orderFor(exercise, seed), figure: sampleFigure(seed, 'women') };
  return {
    student: student.toLowerCase(),
    who: { student, number: '' },
    exercise: exercise.id,
    saved: null,
    share: 1,
    checks: [],
    freeHand: freeHandOf({ exercise, order, handIn: { ...rightOverlap, exercise: exercise.id, steps } }),
  };
}
