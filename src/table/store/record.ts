import { isRecord } from '../../drafting/record.ts';
import type { HandIn } from '../../exchange/hand-in.ts';
import { orderFrom } from '../../exchange/order-from.ts';
import { readHandInJson } from '../../exchange/read-hand-in.ts';
import type { SetMark } from '../../exchange/set.ts';
import { handInJson } from '../../exchange/write-hand-in.ts';
import type { Exercise } from '../../grader/exercise.ts';

/** What is kept of a draft after every step: all that would be handed in, and where one stands in the working. */
export interface DraftRecord {
  readonly handIn: HandIn;
  readonly upTo: number;
  /** Whether the draft lies as it was checked, with the notes of that check under it. */
  readonly checked: boolean;
}

/** Where a draft is kept: one to an exercise, and one to an exercise of each problem set. */
export function keyOf(exercise: string, set: SetMark | null): string {
  return set === null ? `gorgeline.draft.${exercise}` : `gorgeline.draft.${exercise}.${set.id}`;
}

export function printRecord({ handIn, upTo, checked }: DraftRecord): string {
  return JSON.stringify({ upTo, checked, handIn: handInJson(handIn) });
}

/** Whether two records are of the same draft, whoever reads it in whatever unit, wherever they stand in it, checked or not. */
export function sameDraft(a: DraftRecord, b: DraftRecord): boolean {
  const { student, number, unit, checks, begun } = a.handIn;
  const other = { ...b.handIn, student, number, unit, checks, begun };
  return printRecord(a) === printRecord({ ...a, handIn: other });
}

/** What was kept; null when it cannot be read as a draft of this exercise. */
export function readRecord(text: string, exercise: Exercise): DraftRecord | null {
  const json = parsed(text);
  if (!isRecord(json)) return null;
  const read = readHandInJson(json['handIn']);
  if (!read.ok || read.handIn.exercise !== exercise.id || !orderFrom(read.handIn, exercise).ok) return null;
  const { steps } = read.handIn;
  const upTo = json['upTo'];
  const whole = typeof upTo === 'number' && Number.isInteger(upTo) && upTo >= 0 && upTo <= steps.length;
  return { handIn: read.handIn, upTo: whole ? upTo : steps.length, checked: json['checked'] === true };
}

function parsed(text: string): unknown {
  try {
    return JSON.parse(text);
  } catch {
    return null;
  }
}
