import type { HalfStep } from './form.ts';
import { knownStep } from './known-step.ts';
import { eachName } from './references.ts';
import type { Name, Step } from './step.ts';

/** The names a step uses, of objects and of measures, each once, in the order of its blanks. */
export function namesUsedBy(step: Step): readonly Name[] {
  const { construction } = knownStep(step as unknown as HalfStep);
  if (construction !== null) return construction.uses;
  const found = new Set<Name>();
  eachName(step as unknown as HalfStep, (name) => found.add(name));
  return [...found];
}

/**
 * The positions of the steps that the object called `name` comes from, its own step last, in the order of the draft.
 * Empty where no step makes it.
 */
export function ancestorsOf(steps: readonly Step[], name: Name): readonly number[] {
  const needed = new Set<Name>([name]);
  const found: number[] = [];
  // Steps use only what comes before them, so one pass from the end meets every need.
  for (let index = indexOf(steps, name); index >= 0; index--) {
    const step = steps[index] as Step;
    if (!needed.has(step.name)) continue;
    found.unshift(index);
    for (const used of namesUsedBy(step)) needed.add(used);
  }
  return found;
}

const indexOf = (steps: readonly Step[], name: Name): number => steps.findIndex((step) => step.name === name);
