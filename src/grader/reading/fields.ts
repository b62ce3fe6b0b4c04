import * as v from 'valibot';
import { EXPRESSION_LENGTH, NAME_LENGTH } from '../../drafting/limits.ts';
import { NAME_PATTERN } from '../../drafting/name.ts';
import { isRecord } from '../../drafting/record.ts';
import type { Key } from '../../words/message.ts';
import { hasUnseen } from '../../words/unseen.ts';

/**
 * Schemas whose every message is a key of the catalogue that says what is wanted, so that `faultsOf` can speak it.
 * A missing field speaks of what the field wants, an unknown one of the fields there are.
 */

/** What is wanted, as it stands in a sentence: a key of the catalogue that needs no values. */
export type Wanted = Extract<Key, `wants.${string}`>;

/** What objects made by `fields` want, whose messages are made up as they fail. */
const wantedByObjects = new WeakMap<object, Wanted>();

/** An object with these fields and no others. */
export function fields<const E extends v.ObjectEntries>(entries: E, wanted: Wanted) {
  const made = v.strictObject(entries, (issue) => {
    if (issue.expected === 'never') return `unknown ${Object.keys(entries).join(' ')}`;
    const missing = /^"(.+)"$/.exec(issue.expected ?? '')?.[1];
    return missing === undefined ? wanted : `missing ${wantedOf(entries[missing]) ?? wanted}`;
  });
  wantedByObjects.set(made, wanted);
  return made;
}

/** What a schema made here wants, or the first in its pipe; null for any other. */
export function wantedOf(schema: unknown): Wanted | null {
  if (typeof schema !== 'object' || schema === null) return null;
  const { message, pipe, wrapped } = schema as Partial<Record<'message' | 'pipe' | 'wrapped', unknown>>;
  if (typeof message === 'string') return message as Wanted;
  const inner = Array.isArray(pipe) && pipe[0] !== schema ? pipe[0] : wrapped;
  return wantedByObjects.get(schema) ?? wantedOf(inner);
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
  return v.pipe(
    v.string(wanted),
    v.regex(/\S/, wanted),
    v.maxLength(EXPRESSION_LENGTH, 'wants.shorter'),
    v.check((written) => !hasUnseen(written), 'wants.seen'),
  );
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
  // A list passes for a record, whose names would be its positions.
  return v.pipe(v.custom<Record<string, unknown>>(isRecord, wanted), v.record(name('wants.name'), value, wanted));
}
