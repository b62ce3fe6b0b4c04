import type { Remark } from '../remarks.ts';

/** A piece of work as far as it matters when it came. */
interface Dated {
  readonly saved: string | null;
  readonly remarks: readonly Remark[];
}

/**
 * The work of a student to whom the teacher gave more time: what was saved by then is not late. `until` is ISO 8601; null where
 * no time was given. It takes nothing away: a moment before the day of the set leaves that as it is.
 */
export function inOwnTime<W extends Dated>(work: W, until: string | null): W {
  const { saved, remarks } = work;
  const isInTime = until !== null && saved !== null && Date.parse(saved) <= Date.parse(until);
  return isInTime && remarks.includes('late')
    ? { ...work, remarks: remarks.filter((remark) => remark !== 'late') }
    : work;
}
