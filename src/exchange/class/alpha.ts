/**
 * Cronbach's alpha of a set: how far its parts measure one and the same skill, from the marks of those who did all of it.
 * `scores` has a row a student and a column a part. With k parts, alpha = k / (k - 1) * (1 - sum of the parts' variances /
 * variance of the sums) (L. J. Cronbach, "Coefficient alpha and the internal structure of tests", Psychometrika 16, 1951,
 * 297-334). Null for less than two parts or students, and where all sums are the same.
 */
export function cronbachAlpha(scores: readonly (readonly number[])[]): number | null {
  const parts = scores[0]?.length ?? 0;
  if (parts < 2 || scores.length < 2) return null;
  const sums = scores.map((row) => row.reduce((sum, one) => sum + one, 0));
  const whole = variance(sums);
  // Are all sums the same, but for the last bits of adding up?
  if (whole <= ALIKE ** 2) return null;
  const each = Array.from({ length: parts }, (_, part) => variance(scores.map((row) => row[part] ?? 0)));
  return (parts / (parts - 1)) * (1 - each.reduce((sum, one) => sum + one, 0) / whole);
}

/** Sums that differ by less are the same sum, added up in another order. Marks of two drafts differ by far more. */
const ALIKE = 1e-9;

/** The variance of a sample: squares about the mean, by one less than there are. */
function variance(values: readonly number[]): number {
  const mean = values.reduce((sum, one) => sum + one, 0) / values.length;
  return values.reduce((sum, one) => sum + (one - mean) ** 2, 0) / (values.length - 1);
}
