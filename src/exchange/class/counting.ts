import { type ClassWork, latestOf } from './class-work.ts';

/** Which of several attempts of a student at an exercise counts: what was saved last, or what earned most. */
export const COUNTS = ['last', 'best'] as const;
export type Counts = (typeof COUNTS)[number];

/** A piece of work as far as it matters which one counts. */
type Attempt = Pick<ClassWork, 'student' | 'exercise' | 'saved'>;

/** The same marks, added up in another order, may differ in their last digit. */
const SAME = 1e-9;

/** Of work handed in more than once the piece that counts, by what each `earned`. Of several that earned as much, the last. */
export function countingOf<W extends Attempt>(
  work: readonly W[],
  counts: Counts,
  earned: (one: W) => number,
): readonly W[] {
  if (counts === 'last') return latestOf(work);
  const most = new Map<string, number>();
  for (const one of work) most.set(placeOf(one), Math.max(earned(one), most.get(placeOf(one)) ?? 0));
  return latestOf(work.filter((one) => earned(one) > (most.get(placeOf(one)) ?? 0) - SAME));
}

/** The work beside the pieces that count, in the order it came. */
export function besideOf<W>(work: readonly W[], counted: readonly W[]): readonly W[] {
  const counting = new Set(counted);
  return work.filter((one) => !counting.has(one));
}

function placeOf({ student, exercise }: Attempt): string {
  return JSON.stringify([student, exercise]);
}
