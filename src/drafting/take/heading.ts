import { made, type Outcome } from '../outcome.ts';
import { isRecord } from '../record.ts';
import type { Scope } from '../scope.ts';
import type { Course } from '../taken.ts';
import type { Blank } from '../verbs.ts';
import { takeObject } from './object.ts';
import { unreadable } from './unreadable.ts';

/** The line a curve leaves or arrives along, or square to. */
export function takeHeading(value: unknown, blank: Blank, scope: Scope): Outcome<Course> {
  if (!isRecord(value)) return unreadable(blank);
  const { along, square } = value;
  const kind = along === undefined ? 'square' : 'along';
  // Both at once is no heading.
  if (kind === 'along' && square !== undefined) return unreadable(blank);
  const line = takeObject(value[kind], ['line'], scope);
  return line.ok ? made({ kind, line: line.value.line }) : line;
}
