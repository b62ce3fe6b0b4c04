import { renameObject } from '../../drafting/rename.ts';
import type { Name, Step } from '../../drafting/step.ts';
import type { Draft, Filling } from './bench.ts';

/** Puts a step where one stands in the working; what comes after it stays and follows. */
export function insert({ steps, upTo }: Draft, step: Step): Draft {
  const free = step.answers === undefined ? steps : steps.map((one) => withoutAnswer(one, step.answers as Name));
  return { steps: [...free.slice(0, upTo), step, ...free.slice(upTo)], upTo: upTo + 1 };
}

/** Takes a step out. What was built on it stays in the working, and says what it misses, so that it can be mended. */
export function erase({ steps, upTo }: Draft, index: number): Draft {
  return { steps: steps.filter((_, at) => at !== index), upTo: index < upTo ? upTo - 1 : upTo };
}

/** Changes one blank of a step; null empties it. */
export function amend(draft: Draft, index: number, field: string, value: Filling | null): Draft {
  return change(draft, index, (step) => {
    const rest = Object.fromEntries(Object.entries(step).filter(([name]) => name !== field));
    return (value === null ? rest : { ...step, [field]: value }) as unknown as Step;
  });
}

/** Says which target a step answers, or that it answers none. A target is answered by one step. */
export function answer({ steps, upTo }: Draft, index: number, target: Name | null): Draft {
  return {
    upTo,
    steps: steps.map((step, at) => {
      const free =
        target === null && at !== index
          ? step
          : withoutAnswer(step, at === index ? (step.answers ?? '') : (target ?? ''));
      return at === index && target !== null ? { ...free, answers: target } : free;
    }),
  };
}

function withoutAnswer(step: Step, target: Name): Step {
  if (step.answers !== target) return step;
  const { answers: _, ...rest } = step;
  return rest as Step;
}

/** Gives what a step makes another name, and says so wherever it is mentioned. */
export function rename({ steps, upTo }: Draft, index: number, name: Name): Draft {
  const from = steps[index]?.name;
  return { upTo, steps: from === undefined ? steps : renameObject(steps, from, name) };
}

function change({ steps, upTo }: Draft, index: number, how: (step: Step) => Step): Draft {
  return { upTo, steps: steps.map((step, at) => (at === index ? how(step) : step)) };
}
