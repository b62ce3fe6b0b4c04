import { isRecord } from '../../drafting/record.ts';
import type { Name } from '../../drafting/step.ts';
import type { HandIn } from '../../exchange/hand-in.ts';
import { readHandInJson } from '../../exchange/read-hand-in.ts';
import type { ProblemSet, SetMark } from '../../exchange/set.ts';
import type { Student } from '../../exchange/student.ts';
import { handInJson } from '../../exchange/write-hand-in.ts';
import { setMark } from '../../exchange/write-set.ts';
import { keyOf } from '../../table/store/record.ts';
import type { Storage } from '../../table/store/storage.ts';

/** How far one exercise of a set has come in this browser. */
export type Progress =
  | { readonly state: 'fresh' }
  | { readonly state: 'begun'; readonly handIn: HandIn }
  | { readonly state: 'damaged' };

/** What is kept of an exercise of the set. */
export function progressOf(local: Storage, exercise: Name, mark: SetMark): Progress {
  const text = local.read(keyOf(exercise, mark));
  if (text === null) return { state: 'fresh' };
  const read = readHandInJson(keptIn(text));
  if (!read.ok) return { state: 'damaged' };
  return read.handIn.steps.length === 0 ? { state: 'fresh' } : { state: 'begun', handIn: read.handIn };
}

function keptIn(text: string): unknown {
  try {
    const json: unknown = JSON.parse(text);
    return isRecord(json) ? json['handIn'] : null;
  } catch {
    return null;
  }
}

/**
 * The hand-in of a set: one line for each exercise that was begun, in the order of the set. `saved` is when, ISO 8601.
 */
export function handInOf(
  local: Storage,
  set: ProblemSet,
  { student, number }: Student,
  saved: string,
): { readonly text: string; readonly count: number } {
  const mark = setMark(set);
  const lines = set.exercises.flatMap(({ exercise }) => {
    const progress = progressOf(local, exercise, mark);
    if (progress.state !== 'begun') return [];
    const whose = { student: student.trim(), number: number.trim() };
    return [JSON.stringify(handInJson({ ...progress.handIn, ...whose, set: mark, saved }))];
  });
  return { text: lines.map((line) => `${line}\n`).join(''), count: lines.length };
}
