import { message } from '../words/message.ts';
import type { HalfStep } from './form.ts';
import { makers } from './make/make.ts';
import { failed, type Outcome } from './outcome.ts';
import { whyOffSheet } from './reach.ts';
import type { Scope } from './scope.ts';
import type { Shape } from './shape.ts';
import type { Step } from './step.ts';
import { take } from './take/take.ts';
import type { Form } from './verbs.ts';

/** Carries out one step in its form: takes each blank, then makes the shape. Whatever is wrong is a message. */
export function carryOut(step: HalfStep, form: Form, scope: Scope): Outcome<Shape> {
  const given: Record<string, unknown> = {};
  for (const { field, blank, optional } of form.fields) {
    const value = step[field];
    if (value === undefined || value === null) {
      if (optional) continue;
      return failed(field, message('problem.blank'));
    }
    const taken = take(blank, value, scope);
    if (!taken.ok) return { ...taken, field };
    given[field] = taken.value;
  }
  // The blanks are taken by the form, so they are what its maker is typed for.
  const outcome = (makers[form.id] as (given: unknown, step: Step) => Outcome<Shape>)(given, step as unknown as Step);
  if (!outcome.ok) return outcome;
  const why = whyOffSheet(outcome.value);
  return why ? failed(null, why) : outcome;
}
