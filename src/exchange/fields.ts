import * as v from 'valibot';
import type { Wanted } from '../grader/reading/fields.ts';
import { type Strictness, strictnessFactor } from '../grader/tolerance.ts';

/** Fields that files people pass around have in common. */

const LINE_LENGTH = 200;

/** One line of text, possibly empty, without control characters. */
export function line(wanted: Wanted, most = LINE_LENGTH) {
  return v.pipe(v.string(wanted), v.maxLength(most, wanted), v.regex(/^[^\p{Cc}]*$/u, wanted));
}

/** Some lines of text, possibly none, without other control characters. */
export function lines(wanted: Wanted, most: number) {
  return v.pipe(v.string(wanted), v.maxLength(most, wanted), v.regex(/^(?:\n|[^\p{Cc}])*$/u, wanted));
}

/** A whole number from `least` to `most`. */
export function whole(least: number, most: number, wanted: Wanted) {
  return v.pipe(v.number(wanted), v.integer(wanted), v.minValue(least, wanted), v.maxValue(most, wanted));
}

/**
 * A date and time with its zone, or null, as every machine reads it (ECMA-262, section 21.4.1.32): ISO 8601 allows more, such as
 * an hour alone for the zone, of which some make no moment at all. A day that no month has is none: machines take 30 February
 * for 2 March.
 */
export function moment(wanted: Wanted) {
  return v.nullable(
    v.pipe(v.string(wanted), v.isoTimestamp(wanted), v.regex(SAME_EVERYWHERE, wanted), v.check(isOnCalendar, wanted)),
  );
}

const SAME_EVERYWHERE = /T.*(?:Z|[+-]\d\d:\d\d)$/;

/** Whether the day with which a date and time in ISO 8601 begins is one of the calendar. */
export function isOnCalendar(moment: string): boolean {
  const day = moment.slice(0, 'YYYY-MM-DD'.length);
  const found = new Date(`${day}T00:00:00Z`);
  // What is no day at all is the business of the form before.
  return Number.isNaN(found.valueOf()) || found.toISOString().startsWith(day);
}

export const strictnesses = Object.keys(strictnessFactor) as [Strictness, ...Strictness[]];
