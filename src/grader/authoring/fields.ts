import * as v from 'valibot';
import { EXPRESSION_LENGTH, NAME_LENGTH } from '../../drafting/limits.ts';
import { NAME_PATTERN } from '../../drafting/name.ts';
import type { Key } from '../../words/message.ts';

/**
 * Schemas whose every message is a key of the catalogue that says what is wanted, so that `faultsOf` can speak it.
 * A missing field speaks of what the field wants, an unknown one of the fields there are.
 */

/** What is wanted, as it stands in a sentence: a key of the catalogue that needs no values. */
export type Wanted = Extract<Key, `wants.${string}`>;

type Entries = v.ObjectEntries;

/** An object with these fields and no others. */
export function fields<const E extends Entries>(entries: E, wanted: Wanted) {
  return v.strictObject(entries, (issue) => {
    if (issue.expected === 'never') return `unknown ${Object.keys(entries).join(' ')}`;
    const missing = /^"(.+)"$/.exec(issue.expected ?? '')?.[1];
    return missing === undefined ? wanted : `missing ${wantedBy(entries[missing]) ?? wanted}`;
  });
}

/** The message of a schema, or of the first in its pipe. */
function wantedBy(schema: unknown): string | null {
  const { message, pipe, wrapped } = (schema ?? {}) as { message?: unknown; pipe?: readonly unknown[]; wrapped?: unknown };
  if (typeof message === 'string') return message;
  if (pipe !== undefined) return wantedBy(pipe[0] === schema ? null : pipe[0]);
  return wrapped === undefined ? null : wantedBy(wrapped);
}

/** Text with something in it. */
export function text(wanted: Wanted, most = TEXT_LENGTH) {
  return v.pipe(v.string(wanted), v.regex(/\S/, wanted), v.maxLength(most, 'wants.shorter'));
}

/** Longest text of an author, in characters. */
const TEXT_LENGTH = 4000;

export function name(wanted: Wanted) {
  return v.pipe(v.string(wanted), v.regex(NAME_PATTERN, 'wants.name'), v.maxLength(NAME_LENGTH, 'wants.shorter'));
}

export function expression(wanted: Wanted) {
  return v.pipe(v.string(wanted), v.regex(/\S/, wanted), v.maxLength(EXPRESSION_LENGTH, 'wants.shorter'));
}

/** One of a few words. */
export function word<const O extends readonly string[]>(options: O, wanted: Wanted) {
  return v.picklist(options, wanted);
}

/** A list; with `least` a minimum of entries. */
export function list<S extends v.GenericSchema>(entry: S, wanted: Wanted, least = 0) {
  return v.pipe(v.array(entry, wanted), v.minLength(least, wanted), v.maxLength(LIST_LENGTH, 'wants.shorter'));
}

/** Most entries of a list an author writes. */
const LIST_LENGTH = 200;

/** Names of the author's choosing, each with a value. */
export function named<S extends v.GenericSchema>(value: S, wanted: Wanted) {
  return v.record(name('wants.name'), value, wanted);
}
