import { namesUsedBy } from './dependencies.ts';
import { formOf, type HalfStep } from './form.ts';
import { isName, isReserved } from './name.ts';
import type { Name, Step } from './step.ts';
import type { Form } from './verbs.ts';

/** What a step is whatever lies on the table. */
export interface KnownStep {
  /** Null where there is no such verb. */
  readonly form: Form | null;
  /** Whether its name is well-formed and no word of the language. */
  readonly nameable: boolean;
  /** The names it uses, of objects and of measures. */
  readonly uses: readonly Name[];
}

const known = new WeakMap<HalfStep, KnownStep>();

/** What a step is, looked at once: a draft is replayed many times, and its steps are never changed in place. */
export function knownStep(step: HalfStep): KnownStep {
  const before = known.get(step);
  if (before) return before;
  const { name } = step;
  const now = {
    form: formOf(step),
    nameable: isName(name) && !isReserved(name),
    uses: namesUsedBy(step as unknown as Step),
  };
  known.set(step, now);
  return now;
}
