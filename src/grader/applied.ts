import { putInExpression } from '../drafting/expression/put-in.ts';
import type { Expression } from '../drafting/step.ts';
import { houseRules } from '../garment/house-rules.ts';
import type { Exercise } from './exercise.ts';
import type { Order } from './order.ts';

/** An amount as the learner writes it: what a house rule gives is written as the rule says it, where the learner is to apply it. */
export function applied(text: Expression, { applies = [] }: Exercise, { house }: Order): Expression {
  return houseRules
    .filter(({ name }) => applies.includes(name))
    .reduce((written, { name, makes, usual, choices }) => {
      const choice = choices.find((one) => one.name === (house[name] ?? usual));
      return choice === undefined ? written : putInExpression(written, makes, choice.gives);
    }, text);
}
