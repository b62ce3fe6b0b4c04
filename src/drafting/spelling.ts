/** How many letters a slip may put wrong: one in a short word, two in a longer one. */
const slips = (word: string): number => (word.length <= 4 ? 1 : 2);

/**
 * The known word nearest in spelling to `word`; null when none is near. A letter left out, put in, changed, or two
 * neighbours exchanged each count as one slip (optimal string alignment distance, Damerau 1964). Numbers are not
 * misspelt: `mark-2` is another mark than `mark-1`.
 */
export function nearestSpelling(word: string, known: Iterable<string>): string | null {
  let best: string | null = null;
  let least = slips(word) + 1;
  for (const candidate of known) {
    if (Math.abs(candidate.length - word.length) >= least || numbersIn(candidate) !== numbersIn(word)) continue;
    const apart = spellingDistance(word, candidate);
    if (apart < least) [best, least] = [candidate, apart];
  }
  return best;
}

const numbersIn = (word: string): string => word.replace(/\D+/g, ' ').trim();

/** The number of slips that turn `a` into `b`. */
export function spellingDistance(a: string, b: string): number {
  const rows: number[][] = Array.from({ length: a.length + 1 }, (_, i) => [i]);
  const at = (i: number, j: number): number => rows[i]?.[j] ?? 0;
  for (let j = 1; j <= b.length; j++) rows[0]?.push(j);
  for (let i = 1; i <= a.length; i++) {
    for (let j = 1; j <= b.length; j++) {
      const changed = at(i - 1, j - 1) + (a[i - 1] === b[j - 1] ? 0 : 1);
      const exchanged =
        i > 1 && j > 1 && a[i - 1] === b[j - 2] && a[i - 2] === b[j - 1] ? at(i - 2, j - 2) + 1 : changed;
      rows[i]?.push(Math.min(at(i - 1, j) + 1, at(i, j - 1) + 1, changed, exchanged));
    }
  }
  return at(a.length, b.length);
}
