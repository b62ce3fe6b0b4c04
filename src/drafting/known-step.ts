import { type Construction, constructionOf } from './construction.ts';
import { formOf, type HalfStep } from './form.ts';
import { isName, isReserved } from './name.ts';
import type { Name } from './step.ts';
import type { Form } from './verbs.ts';

/** What a step is whatever lies on the table. */
export interface KnownStep {
  readonly step: HalfStep;
  /** As it is written: it is a name where the step is nameable. */
  readonly name: Name;
  /** The target it answers; null where it answers none. */
  readonly answers: Name | null;
  /** Null where there is no such verb. */
  readonly form: Form | null;
  /** Whether its name is well-formed and no word of the language. */
  readonly nameable: boolean;
  /** Null where what stands in its blanks cannot be told. */
  readonly construction: Construction | null;
}

const known = new WeakMap<HalfStep, KnownStep>();

/** What a step is, looked at once: a draft is replayed many times, and its steps are never changed in place. */
export function knownStep(step: HalfStep): KnownStep {
  const before = known.get(step);
  if (before) return before;
  const form = formOf(step);
  const { name, answers } = step;
  const construction = form === null ? null : constructionOf(step, form);
  const now = {
    step,
    name: name as Name,
    answers: typeof answers === 'string' ? answers : null,
    form,
    nameable: isName(name) && !isReserved(name),
    construction,
  };
  known.set(step, now);
  return now;
}
