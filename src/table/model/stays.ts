import { evaluate, hasNumberOnly } from '../../drafting/expression.ts';
import type { Step } from '../../drafting/step.ts';
import { stepFields } from '../../grader/step-fields.ts';
import { type Message, message } from '../../words/message.ts';

/** What in a step stays as it is when the figure changes, and so may let go on another one; null where all of it follows. */
export function whatStays(step: Step): Message | null {
  if (step.verb === 'pencil') return message('table.stays-by-eye', { name: { named: step.name } });
  const typed = stepFields(step).find(({ text }) => hasNumberOnly(text) && !isNothing(text));
  return typed ? message('table.stays-number', { typed: typed.text }) : null;
}

/** Nothing is nothing on every figure. */
function isNothing(text: string): boolean {
  const read = evaluate(text, new Map());
  return read.ok && read.quantity.value === 0;
}
