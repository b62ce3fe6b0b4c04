import { putInExpression } from '../drafting/expression/put-in.ts';
import type { Expression, Step } from '../drafting/step.ts';
import { houseRules } from '../garment/house-rules.ts';
import type { Exercise } from './exercise.ts';
import type { Order } from './order.ts';
import { stepFields } from './step-fields.ts';

/** An amount as the learner writes it: what a house rule gives is written as the rule says it, where the learner is to apply it. */
export function applied(text: Expression, { applies = [] }: Exercise, { house }: Order): Expression {
  return houseRules
    .filter(({ name }) => applies.includes(name))
    .reduce((written, { name, makes, usual, choices }) => {
      const choice = choices.find((one) => one.name === (house[name] ?? usual));
      return choice === undefined ? written : putInExpression(written, makes, choice.gives);
    }, text);
}

/** Steps of the marker's as the learner would write them. */
export function appliedSteps(steps: readonly Step[], exercise: Exercise, order: Order): readonly Step[] {
  return steps.map((step) => {
    const fields = stepFields(step).map(({ field, text }) => [field, applied(text, exercise, order)]);
    return { ...step, ...Object.fromEntries(fields) } as Step;
  });
}
