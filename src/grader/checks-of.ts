import type { Name } from '../drafting/step.ts';
import type { Check, Exercise } from './exercise.ts';

const found = new WeakMap<readonly Check[], ReadonlyMap<Name, readonly Check[]>>();

/** The checks of a target, in their order. */
export function checksOf({ checks }: Exercise, target: Name): readonly Check[] {
  const known = found.get(checks) ?? Map.groupBy(checks, (check) => check.target);
  found.set(checks, known);
  return known.get(target) ?? [];
}
