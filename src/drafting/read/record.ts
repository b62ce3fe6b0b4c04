import { type Message, message } from '../../words/message.ts';
import { nearestSpelling } from '../spelling.ts';
import { shortened } from '../word-of.ts';
import type { Fault, Reader } from './fault.ts';

/** One field of a record in a file. */
export interface Entry {
  readonly field: string;
  readonly read: Reader;
  readonly wanted: Message;
  readonly optional: boolean;
}

/** How a record is read. */
export interface Layout {
  readonly entries: readonly Entry[];
  /** What to say of a field that does not belong there. */
  readonly strange: (field: string) => Message;
  /** What it is read into. */
  readonly empty: () => Record<string, unknown>;
}

/** The layout of a record of which there is nothing more to say. */
export function layoutOf(entries: readonly Entry[]): Layout {
  return { entries, strange: (field) => strangeField(field, entries), empty: () => ({}) };
}

/** Reads a record field by field. What is missing and what does not belong there are faults. */
export function readRecord(
  record: Readonly<Record<string, unknown>>,
  at: string,
  { entries, strange, empty }: Layout,
  faults: Fault[],
): Readonly<Record<string, unknown>> {
  const inside = (field: string): string => (at === '' ? field : `${at}.${field}`);
  const copy = empty();
  for (const { field, read, wanted, optional } of entries) {
    const value = Object.hasOwn(record, field) ? record[field] : undefined;
    if (value !== undefined) copy[field] = read(value, inside(field), faults);
    else if (!optional)
      faults.push({ at: inside(field), message: message('read.missing', { wanted: { said: wanted } }) });
  }
  for (const field of Object.keys(record)) {
    if (record[field] === undefined || entries.some((entry) => entry.field === field)) continue;
    faults.push({ at: inside(shortened(field)), message: strange(field) });
  }
  return copy;
}

function strangeField(field: string, entries: readonly Entry[]): Message {
  const meant = nearestSpelling(
    field,
    entries.map((entry) => entry.field),
  );
  return meant === null ? message('read.unknown') : message('read.unknown-meant', { meant });
}
