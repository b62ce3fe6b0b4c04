import { type Strictness, strictnessFactor } from '../../../grader/tolerance.ts';

/** By which tolerances the most of a class were marked, and how many; the finer of two that are as many. Null of nobody. */
export function usualStrictness(
  work: readonly { readonly strictness: Strictness }[],
): { readonly strictness: Strictness; readonly count: number } | null {
  const counts = [...Map.groupBy(work, ({ strictness }) => strictness)].map(([strictness, all]) => ({
    strictness,
    count: all.length,
  }));
  const byCount = counts.toSorted(
    (a, b) => b.count - a.count || strictnessFactor[a.strictness] - strictnessFactor[b.strictness],
  );
  return byCount[0] ?? null;
}
