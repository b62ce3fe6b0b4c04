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

/**
 * A step as it was read from a file, with room for what is known of it. Most are seen in one draft and never again: to fill a map with
 * them takes as long as to know them, and keeps them alive for a while.
 */
export class ReadStep {
  #known: KnownStep | null = null;

  get known(): KnownStep | null {
    return this.#known;
  }

  set known(known: KnownStep) {
    this.#known = known;
  }
}

/** What is known of steps that have no room for it. */
const others = new WeakMap<object, KnownStep>();

/** What a step is, looked at once: a draft is replayed many times, and its steps are never changed in place. */
export function knownStep(step: HalfStep): KnownStep {
  const read = asRead(step);
  const before = read === null ? others.get(step) : read.known;
  if (before) return before;
  const now = knowStep(step);
  if (read === null) others.set(step, now);
  else read.known = now;
  return now;
}

function asRead(step: object): ReadStep | null {
  return step instanceof ReadStep ? step : null;
}

function knowStep(step: HalfStep): KnownStep {
  const form = formOf(step);
  const { name, answers } = step;
  const construction = form === null ? null : constructionOf(step, form);
  return {
    step,
    name: name as Name,
    answers: typeof answers === 'string' ? answers : null,
    form,
    nameable: isName(name) && !isReserved(name),
    construction,
  };
}
