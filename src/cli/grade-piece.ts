import type { Name } from '../drafting/step.ts';
import { type WorkRow, workRow } from '../exchange/grade-row.ts';
import { orderFrom } from '../exchange/order-from.ts';
import { readHandIn } from '../exchange/read-hand-in.ts';
import { refusalOf } from '../exchange/refusal.ts';
import type { Exercise } from '../grader/exercise.ts';
import { gradeDraft } from '../grader/grade.ts';
import type { Grade } from '../grader/result.ts';
import type { Strictness } from '../grader/tolerance.ts';
import { type Message, message } from '../words/message.ts';
import { say } from '../words/say.ts';
import { CommandError } from './command-error.ts';

export type Marked =
  | { readonly ok: true; readonly row: WorkRow; readonly notMade: NotMade }
  | { readonly ok: false; readonly reason: string };

/** Targets whose step could not be carried out, each with that step's number, from 1. */
export type NotMade = ReadonlyMap<Name, number>;

const reader = { language: 'en', unit: 'in' } as const;

/** One piece of work: its text, and where it was found. */
interface Piece {
  readonly text: string;
  readonly where: string;
}

/** Marks one piece of work; `strictness` counts instead of the hand-in's own where it is given. Refuses in one line. */
export function gradePiece(
  { text, where }: Piece,
  load: (name: string) => Exercise,
  strictness: Strictness | null,
): Marked {
  try {
    const read = readHandIn(text);
    if (!read.ok) return refused(refusalOf(read.faults));
    const { handIn } = read;
    const exercise = load(handIn.exercise);
    const made = orderFrom(handIn, exercise);
    if (!made.ok) return refused(refusalOf(made.faults));
    const grade = gradeDraft(exercise, made.order, handIn.steps, strictness ?? handIn.strictness);
    return { ok: true, row: workRow(where, handIn, exercise, grade), notMade: notMadeIn(grade) };
  } catch (error) {
    if (error instanceof CommandError) return { ok: false, reason: oneLine(error.message) };
    // One piece of work that the grader stumbles over must not stop the others.
    return refused(message('command.stumbled', { why: error instanceof Error ? error.message : String(error) }));
  }
}

function notMadeIn({ reports }: Grade): NotMade {
  return new Map(reports.flatMap(({ target, notMade }) => (notMade === null ? [] : [[target, notMade + 1] as const])));
}

function refused(said: Message): Marked {
  return { ok: false, reason: oneLine(say(said, reader)) };
}

function oneLine(text: string): string {
  return text.replace(/\s*\n\s*/g, ' ');
}
