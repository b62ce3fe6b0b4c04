import { inTurn, short } from './rounds.ts';

/** One way of doing something to each of a number of things. */
export interface Contender {
  readonly by: string;
  readonly how: string;
  /** How far it is off at the worst, mm. */
  readonly error: number;
  readonly missed?: number;
  readonly run: (at: number) => unknown;
}

export interface Outcome {
  readonly by: string;
  readonly how: string;
  readonly 'worst error, mm': string;
  readonly missed?: number;
  readonly 'microseconds each': number;
  /** How many times as long as the first takes. */
  readonly ratio: number;
}

const ROUNDS = 40;

/** A round of each is as long as this, ms, at the least: so that it is as quick as it can get, and the clock fine enough. */
const ROUND = 10;

/** How long each takes, in turn with the others, and how right it is. */
export function contest(contenders: readonly Contender[], count: number): readonly Outcome[] {
  const all =
    ({ run }: Contender, times: number) =>
    (): void => {
      for (let time = 0; time < times; time += 1) for (let one = 0; one < count; one += 1) run(one);
    };
  const times = contenders.map((one) => timesIn(ROUND, all(one, 1)));
  const runs = contenders.map((one, at) => [String(at), all(one, times[at] ?? 1)]);
  const took = inTurn(Object.fromEntries(runs), ROUNDS);
  const each = contenders.map((_, at) => (took[String(at)] ?? Number.NaN) / (times[at] ?? 1));
  const first = each[0] ?? Number.NaN;
  return contenders.map(({ by, how, error, missed }, at) => {
    const ms = each[at] ?? Number.NaN;
    return {
      by,
      how,
      'worst error, mm': error.toExponential(1),
      ...(missed === undefined ? {} : { missed }),
      'microseconds each': short((ms * 1000) / count),
      ratio: short(ms / first),
    };
  });
}

/** How often something can be done in so many ms. */
function timesIn(ms: number, run: () => void): number {
  const begun = performance.now();
  let times = 0;
  while (performance.now() - begun < ms) {
    run();
    times += 1;
  }
  return times;
}
