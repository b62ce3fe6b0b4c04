import type { Step } from '../../src/drafting/step.ts';
import { applied } from '../../src/grader/applied.ts';
import type { Exercise } from '../../src/grader/exercise.ts';
import type { Order } from '../../src/grader/order.ts';
import { stepFields } from '../../src/grader/step-fields.ts';

/** Steps of the marker's as the learner would write them: house rules applied where the learner is to apply them. */
export function appliedSteps(steps: readonly Step[], exercise: Exercise, order: Order): readonly Step[] {
  return steps.map((step) => {
    const fields = stepFields(step).map(({ field, text }) => [field, applied(text, exercise, order)]);
    return { ...step, ...Object.fromEntries(fields) } as Step;
  });
}
