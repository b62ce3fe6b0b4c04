import { safeParse } from 'valibot';
import type { Fault, Place } from '../../grader/reading/fault.ts';
import { faultsOf } from '../../grader/reading/form-faults.ts';
import { strangeKeys } from '../../grader/reading/strange-keys.ts';
import { message } from '../../words/message.ts';
import { foreignFault } from '../foreign.ts';
import type { HandIn } from '../hand-in.ts';
import { readJson } from '../json.ts';
import type { PieceNotes, StudentNote } from '../notes/notes.ts';
import { readHandInJson } from '../read-hand-in.ts';
import { readSetJson } from '../read-set.ts';
import type { ProblemSet } from '../set.ts';
import { studentKey } from '../student.ts';
import { type FiledUnread, MARKING_FORMAT, MARKING_LENGTH, MARKING_VERSION, type MarkingFile } from './marking-file.ts';
import { markingForm } from './marking-form.ts';

export type MarkingReading =
  | { readonly ok: true; readonly file: MarkingFile }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/** Reads a marking file from its text. `exercises` are the names of those there are. */
export function readMarking(text: string, exercises: readonly string[]): MarkingReading {
  const parsed = readJson(text, MARKING_LENGTH);
  if (!parsed.ok) return { ok: false, faults: [{ at: [], message: parsed.message }] };
  return readMarkingJson(parsed.json, exercises);
}

/**
 * Reads a marking file from parsed JSON, whole or not at all: every hand-in in it by the reader of hand-ins. Whether a
 * hand-in fits its exercise, and a teacher's mark a target of it, shows when the work is marked.
 */
export function readMarkingJson(json: unknown, exercises: readonly string[]): MarkingReading {
  const foreign = foreignFault(json, { format: MARKING_FORMAT, version: MARKING_VERSION, called: 'kind.marking' });
  if (foreign !== null) return { ok: false, faults: [foreign] };
  const parsed = safeParse(markingForm, json, { abortPipeEarly: true });
  const faults = [...strangeKeys(json, ['handIn', 'set']), ...(parsed.success ? [] : faultsOf(parsed.issues))];
  if (!parsed.success || faults.length > 0) return { ok: false, faults };
  const { set: setJson, work, students: written, unread, list = '', counts = 'last', saved } = parsed.output;
  const students = written.map(({ until = null, ...student }) => ({ ...student, until }));
  const set = setIn(setJson, exercises);
  const handIns = work.map(({ handIn }, index) => handInIn(handIn, ['work', index, 'handIn']));
  const unfit = [
    ...set.faults,
    ...handIns.flatMap((one) => one.faults),
    ...work.flatMap(({ marks }, index) => markFaults(marks, ['work', index, 'marks'])),
    ...twiceFaults(students),
  ];
  if (unfit.length > 0) return { ok: false, faults: unfit };
  const pieces = work.flatMap(({ found, marks, comment }, index) => {
    const handIn = handIns[index]?.handIn ?? null;
    return handIn === null ? [] : [{ found, handIn, marks, comment }];
  });
  return {
    ok: true,
    file: { set: set.set, work: pieces, students, unread: unread.map(unreadIn), list, counts, saved },
  };
}

type Written =
  | string
  | { readonly found: string; readonly begun?: string | undefined; readonly why?: string | undefined };

function unreadIn(written: Written): FiledUnread {
  if (typeof written === 'string') return { found: written, begun: '', why: '' };
  const { found, begun = '', why = '' } = written;
  return { found, begun, why };
}

function setIn(
  json: unknown,
  exercises: readonly string[],
): { readonly set: ProblemSet | null; readonly faults: readonly Fault[] } {
  if (json === null) return { set: null, faults: [] };
  const read = readSetJson(json, exercises);
  return read.ok ? { set: read.set, faults: [] } : { set: null, faults: inside(['set'], read.faults) };
}

function handInIn(json: unknown, at: Place): { readonly handIn: HandIn | null; readonly faults: readonly Fault[] } {
  const read = readHandInJson(json);
  return read.ok ? { handIn: read.handIn, faults: [] } : { handIn: null, faults: inside(at, read.faults) };
}

function inside(place: Place, faults: readonly Fault[]): readonly Fault[] {
  return faults.map(({ at, message: said }) => ({ at: [...place, ...at], message: said }));
}

/** Marks that are more than can be earned. */
function markFaults(marks: PieceNotes['marks'], at: Place): readonly Fault[] {
  return Object.entries(marks).flatMap(([target, own]) =>
    own.marks > own.of
      ? [{ at: [...at, target, 'marks'], message: message('files.marks-over', { marks: own.marks, of: own.of }) }]
      : [],
  );
}

/** A student who is written to twice. */
function twiceFaults(students: readonly StudentNote[]): readonly Fault[] {
  const seen = new Map<string, number>();
  return students.flatMap((student, index) => {
    const key = studentKey(student);
    const first = seen.get(key);
    seen.set(key, first ?? index);
    return first === undefined
      ? []
      : [{ at: ['students', index], message: message('files.student-twice', { first: first + 1 }) }];
  });
}
