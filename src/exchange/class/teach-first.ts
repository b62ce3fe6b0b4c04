import type { Name } from '../../drafting/step.ts';
import type { ClassWork } from './class-work.ts';

/**
 * What went wrong with a target: the same classic wrong way, nothing that could be marked (`none`), or off in ways of their own
 * (`off`).
 */
export type Fault = 'none' | 'off' | { readonly way: string };

/** A fault that several made, and with it what a teacher may begin the next lesson with. */
export interface Common {
  readonly exercise: Name;
  readonly target: Name;
  readonly fault: Fault;
  /** How many made it, and of how many who did the exercise. */
  readonly count: number;
  readonly worked: number;
}

/** So many are told at the most: a lesson has no room for more. */
const MOST = 5;
/** What one student did wrong is a word to that student, and no lesson. */
const FEWEST = 2;

/** The faults that most of a class made, the commonest first, of those who made as many a known wrong way before others. */
export function teachFirst(counted: readonly ClassWork[]): readonly Common[] {
  return [...Map.groupBy(counted, ({ exercise }) => exercise).values()]
    .flatMap(faultsIn)
    .filter(({ count }) => count >= FEWEST)
    .toSorted((a, b) => b.count - a.count || rank(a) - rank(b) || before(a, b))
    .slice(0, MOST);
}

function faultsIn(work: readonly ClassWork[]): readonly Common[] {
  const made = work.flatMap(({ exercise, checks }) => {
    const faults = [...Map.groupBy(checks, ({ target }) => target)].flatMap(([target, own]) => {
      const fault = faultOf(own);
      return fault === null ? [] : [{ exercise, target, fault }];
    });
    // Where one answer is not there, those that are made from it are not either: the first is what went wrong.
    const stop = faults.findIndex(({ fault }) => fault === 'none');
    return faults.filter(({ fault }, at) => fault !== 'none' || at === stop);
  });
  return [...Map.groupBy(made, (one) => JSON.stringify(one)).values()].flatMap((alike) =>
    alike.slice(0, 1).map((one) => ({ ...one, count: alike.length, worked: work.length })),
  );
}

function faultOf(checks: ClassWork['checks']): Fault | null {
  const way = checks.find(({ misreading }) => misreading !== null)?.misreading;
  if (way) return { way };
  if (checks.some(({ status }) => status === 'missing')) return 'none';
  return checks.some(({ status }) => status !== 'within') ? 'off' : null;
}

function rank({ fault }: Common): number {
  if (fault === 'off') return 2;
  return fault === 'none' ? 1 : 0;
}

/** The same order wherever the work was found. */
function before(a: Common, b: Common): number {
  const [one, other] = [a, b].map(({ exercise, target, fault }) => JSON.stringify([exercise, target, fault]));
  return (one ?? '') < (other ?? '') ? -1 : 1;
}
