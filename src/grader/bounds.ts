import type { Expression } from '../drafting/step.ts';
import { SAME_CROSSING } from '../geometry/epsilon.ts';
import type { Check } from './exercise.ts';
import type { Reading } from './measures/reading.ts';
import type { Status } from './result.ts';

/** The stated range of a check, in the unit of its reading; null on a side that is open. Without either side the reference's own value is wanted. */
export interface Bounds {
  readonly least: number | null;
  readonly most: number | null;
}

const open: Bounds = { least: null, most: null };

export function boundsOf(check: Check, valueIn: (text: Expression) => number | null): Bounds {
  if (check.least === undefined && check.most === undefined) return open;
  return {
    least: check.least === undefined ? null : valueIn(check.least),
    most: check.most === undefined ? null : valueIn(check.most),
  };
}

/**
 * A range with the right answer in it: drawn on from a slip, that may itself lie outside, and whoever draws it then does what
 * is to be done there.
 */
export function holding({ least, most }: Bounds, right: number): Bounds {
  return { least: least === null ? null : Math.min(least, right), most: most === null ? null : Math.max(most, right) };
}

export function isRange(bounds: Bounds): boolean {
  return bounds.least !== null || bounds.most !== null;
}

/** What was wanted of a reading: inside a stated range the reading itself, outside it the nearer side. */
export function expectedOf(reading: Reading, bounds: Bounds): number {
  if (!isRange(bounds)) return reading.expected;
  if (bounds.least !== null && reading.measured < bounds.least) return bounds.least;
  if (bounds.most !== null && reading.measured > bounds.most) return bounds.most;
  return reading.measured;
}

/** How far off a reading is, in its unit, never negative. */
export function offOf(reading: Reading, bounds: Bounds): number {
  return Math.abs(reading.measured - expectedOf(reading, bounds));
}

/** What is off by no more than this beyond a tolerance, mm or degrees, is off by just as much: the geometry tells no finer. */
const EXACTLY = SAME_CROSSING;

/** All marks within the tolerance, half within twice, none beyond; what is off by just as much is within it. */
export function statusOf(off: number, tolerance: number): Status {
  if (off <= tolerance + EXACTLY) return 'within';
  return off <= 2 * tolerance + EXACTLY ? 'near' : 'beyond';
}

/** The share of a check's marks that a status earns. */
export function shareOf(status: Status): number {
  return status === 'within' ? 1 : status === 'near' ? 0.5 : 0;
}
