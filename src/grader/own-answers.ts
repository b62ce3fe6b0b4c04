import type { Name } from '../drafting/step.ts';
import type { Named } from './measures/lookup.ts';
import type { Strictness } from './tolerance.ts';

const found = new WeakMap<Named, Map<string, boolean>>();

/**
 * Whether the reference's own answer to a target is right on its own sheet, held against the checks once: whoever draws the
 * very same is as right. It is not for granted, where a check asks for more than the reference gives.
 */
export function ownAnswerHolds(own: Named, target: Name, strictness: Strictness, holds: () => boolean): boolean {
  const here = found.get(own) ?? new Map<string, boolean>();
  found.set(own, here);
  const key = `${strictness} ${target}`;
  const known = here.get(key) ?? holds();
  here.set(key, known);
  return known;
}
