import { type Figure, figureMeasures } from '../../../garment/figure.ts';

/** The median: half lie below it, half above; the mean of the two in the middle where they are even in number; 0 of none. */
export function median(values: readonly number[]): number {
  const sorted = values.toSorted((a, b) => a - b);
  const half = sorted.length / 2;
  const above = sorted[Math.floor(half)] ?? 0;
  return Number.isInteger(half) ? ((sorted[half - 1] ?? 0) + above) / 2 : above;
}

/**
 * Of a class's figures the one in the middle: measure by measure nearest to the class's median, in parts of what the measure
 * ranges over there; the first of those that are equally near. It is one of theirs and no average, because a block can be
 * drawn for it. Null of no figures.
 */
export function middleOf<W extends { readonly figure: Figure }>(work: readonly W[]): W | null {
  const scales = figureMeasures.map((measure) => {
    const values = work.map(({ figure }) => figure[measure]);
    const sorted = values.toSorted((a, b) => a - b);
    return { measure, middle: median(values), range: (sorted.at(-1) ?? 0) - (sorted[0] ?? 0) };
  });
  let nearest: W | null = null;
  let away = Number.POSITIVE_INFINITY;
  for (const one of work) {
    const far = scales.reduce(
      (sum, { measure, middle, range }) => sum + (range > 0 ? Math.abs(one.figure[measure] - middle) / range : 0),
      0,
    );
    if (far >= away) continue;
    nearest = one;
    away = far;
  }
  return nearest;
}
