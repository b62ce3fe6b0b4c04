import type { HalfStep } from './form.ts';
import { renamed } from './references.ts';
import type { Name, Step } from './step.ts';

/**
 * The draft with one object called otherwise, in its own step and wherever a later step uses it, inside expressions
 * too. Steps that do not use it are the same objects as before. Targets (`answers`) are not names of objects and stay.
 */
export function renameObject(steps: readonly Step[], from: Name, to: Name): readonly Step[] {
  return steps.map((step) => {
    const own = step.name === from ? { ...step, name: to } : step;
    return renamed(own as unknown as HalfStep, from, to) as unknown as Step;
  });
}
