import { evaluate, hasNumberOnly } from '../../drafting/expression.ts';
import type { Quantity } from '../../drafting/quantity.ts';
import type { Name, Step } from '../../drafting/step.ts';
import { isAlike } from '../../grader/alike.ts';
import { stepFields } from '../../grader/step-fields.ts';
import { type Message, message } from '../../words/message.ts';

/**
 * What in a step stays as it is when the figure changes, and so may let go on another one: a mark by eye, or a typed number that
 * comes to one of `measures`, those that could have been named. Null where all of it follows, and of a number that stands for no
 * measure: the trade lays off such numbers on every figure.
 */
export function whatStays(step: Step, measures: ReadonlyMap<Name, Quantity>): Message | null {
  if (step.verb === 'pencil') return message('table.stays-by-eye', { name: { named: step.name } });
  const [first = null] = stepFields(step).flatMap(({ text }) => standsFor(text, measures));
  return first && message('table.stays-number', { typed: first.typed, name: { named: first.name } });
}

function standsFor(typed: string, measures: ReadonlyMap<Name, Quantity>) {
  const read = hasNumberOnly(typed) ? evaluate(typed, new Map()) : null;
  // Nothing is nothing on every figure.
  if (!read?.ok || read.quantity.value === 0) return [];
  return [...measures].flatMap(([name, measure]) => (isAlike(measure, read.quantity) ? [{ typed, name }] : []));
}
