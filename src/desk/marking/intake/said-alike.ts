import type { Say } from '../../../table/say.ts';
import type { Refused } from './refused.ts';

/** Pieces of which the same is said. */
export interface SaidAlike {
  readonly first: Refused;
  readonly others: readonly Refused[];
}

/**
 * One wrong set brings many pieces that could be read and cannot be marked, and of all of them the same is said: they stand
 * together. What could not be read stands by itself, because each of it goes by itself.
 */
export function saidAlike(refused: readonly Refused[], say: Pick<Say, 'message'>): readonly SaidAlike[] {
  const groups = Map.groupBy(refused, (one) => (one.handIn === null ? one : say.message(one.message)));
  return [...groups.values()].flatMap(([first, ...others]) => (first === undefined ? [] : [{ first, others }]));
}
