/** What is measured against what: each is run over and over, in turn with the others. */
export type Contestants = Readonly<Record<string, (round: number) => void>>;

/**
 * How long each takes, ms: the median of so many rounds, after a quarter as many that do not count. They take turns, so
 * that whatever else the machine does meanwhile is shared by all, and a ratio between them means something on a busy one.
 */
export function inTurn(contestants: Contestants, rounds: number): Readonly<Record<string, number>> {
  const warm = Math.ceil(rounds / 4);
  const times = new Map(Object.keys(contestants).map((name) => [name, [] as number[]]));
  for (let round = -warm; round < rounds; round += 1) {
    for (const [name, run] of Object.entries(contestants)) {
      const begun = performance.now();
      run(round + warm);
      const took = performance.now() - begun;
      if (round >= 0) times.get(name)?.push(took);
    }
  }
  return Object.fromEntries([...times].map(([name, all]) => [name, shareBelow(all, 0.5)]));
}

/** The value below which this share of some lies: 0.5 is the median. */
export function shareBelow(values: readonly number[], share: number): number {
  const sorted = values.toSorted((a, b) => a - b);
  return sorted[Math.min(sorted.length - 1, Math.floor(sorted.length * share))] ?? Number.NaN;
}

/** A figure with as many digits as mean something. */
export function short(value: number): number {
  return Number(value.toPrecision(3));
}
