/** The part of a class in its upper and in its lower group: where the two tell most (T. L. Kelley 1939). */
const GROUP = 0.27;

/** One student: what a part of the work earned of what it was worth, and all of the work, both 0 to 1. */
export interface Standing {
  readonly part: number;
  readonly whole: number;
}

/**
 * The discrimination index of a part of the work: the mean share of it that the upper group earned, less that of the lower
 * group; 1 to -1. The groups are the 27 % best and worst by the whole (T. L. Kelley, "The selection of upper and lower
 * groups for the validation of test items", Journal of Educational Psychology 30, 1939, 17-24). Students who stand alike at
 * a group's edge share its last places evenly, so that the order of the list decides nothing. Null where a group would be
 * smaller than `least`, or where both would have the same students.
 */
export function discriminationIndex(standings: readonly Standing[], least: number): number | null {
  const size = Math.round(standings.length * GROUP);
  if (size < Math.max(1, least)) return null;
  const ranked = standings.map(withoutLastBits).toSorted((a, b) => b.whole - a.whole);
  if (ranked[0]?.whole === ranked.at(-1)?.whole) return null;
  return topMean(ranked, size) - topMean(ranked.toReversed(), size);
}

/** Two who earned as much on different parts stand alike, though adding up in another order may differ in the last bits. */
function withoutLastBits({ part, whole }: Standing): Standing {
  return { part, whole: Math.round(whole * 1e9) / 1e9 };
}

/** The mean of the first `size` places of a ranking; those who stand alike at the edge count in equal parts. */
function topMean(ranked: readonly Standing[], size: number): number {
  const edge = ranked[size - 1]?.whole;
  const inside = ranked.findIndex(({ whole }) => whole === edge);
  const alike = ranked.filter(({ whole }) => whole === edge);
  const shared = mean(alike.map(({ part }) => part)) * (size - inside);
  const sure = ranked.slice(0, inside).reduce((sum, { part }) => sum + part, 0);
  return (sure + shared) / size;
}

function mean(values: readonly number[]): number {
  return values.reduce((sum, one) => sum + one, 0) / values.length;
}
