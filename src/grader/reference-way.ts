import { namesUsedBy } from '../drafting/dependencies.ts';
import type { Givens } from '../drafting/sheet.ts';
import type { Step } from '../drafting/step.ts';
import type { Exercise } from './exercise.ts';

/**
 * Whether the reference has a step that goes this way with the same tool, from the same things among those on the table. From
 * another mark the opposite way may come near the right place by chance, and is not what was done wrong.
 */
export function isReferenceWay(step: Step, { reference }: Exercise, { shapes }: Givens): boolean {
  const ways = waysOf(step, shapes);
  return reference.some((one) => one.verb === step.verb && waysOf(one, shapes) === ways);
}

function waysOf(step: Step, shapes: Givens['shapes']): string {
  const { side, toward, turn } = step as {
    readonly side?: unknown;
    readonly toward?: unknown;
    readonly turn?: unknown;
  };
  const from = namesUsedBy(step).filter((name) => shapes.has(name));
  return JSON.stringify([side, toward, turn, from.toSorted()]);
}
