import type { Step } from '../../../../src/drafting/step.ts';
import { type Sketch, sketchOf } from '../../../../src/exchange/class/laid/sketch.ts';
import { sampleFigure } from '../../../../src/garment/sample.ts';
import type { Exercise } from '../../../../src/grader/exercise.ts';
import { gradeDraft } from '../../../../src/grader/grade.ts';
import type { Order } from '../../../../src/grader/order.ts';
import { orderFor } from '../../../../src/grader/order-for.ts';
import { appliedSteps } from '../../../grader/applied-steps.ts';
import { rightOverlap } from '../../hand-ins.ts';

/** The order of an exercise for somebody of the class, a figure each. */
export function orderOfSeat(exercise: Exercise, seat: number): Order {
  return { ...orderFor(exercise, 'class'), figure: sampleFigure(`class/${seat}`, 'anyone') };
}

/** What is laid over of a draft with these of the marker's steps, drawn at a seat of the class. */
export function sketchAt(exercise: Exercise, seat: number, written: readonly Step[]): Sketch {
  const order = orderOfSeat(exercise, seat);
  const steps = appliedSteps(written, exercise, order);
  const grade = gradeDraft(exercise, order, steps, 'workroom');
  return sketchOf({ exercise, order, grade, handIn: { ...rightOverlap, exercise: exercise.id, steps } });
}
