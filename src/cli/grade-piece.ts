import { type GradeRow, gradeRow } from '../exchange/grade-row.ts';
import { orderFrom } from '../exchange/order-from.ts';
import { readHandIn } from '../exchange/read-hand-in.ts';
import { refusalOf } from '../exchange/refusal.ts';
import type { Exercise } from '../grader/exercise.ts';
import { gradeDraft } from '../grader/grade.ts';
import type { Strictness } from '../grader/tolerance.ts';
import { type Message, message } from '../words/message.ts';
import { say } from '../words/say.ts';
import { CommandError } from './command-error.ts';

export type Marked = { readonly ok: true; readonly row: GradeRow } | { readonly ok: false; readonly reason: string };

const reader = { language: 'en', unit: 'in' } as const;

/** Marks one piece of work; `strictness` counts instead of the hand-in's own where it is given. Refuses in one line. */
export function gradePiece(text: string, load: (name: string) => Exercise, strictness: Strictness | null): Marked {
  try {
    const read = readHandIn(text);
    if (!read.ok) return refused(refusalOf(read.faults));
    const { handIn } = read;
    const exercise = load(handIn.exercise);
    const made = orderFrom(handIn, exercise);
    if (!made.ok) return refused(refusalOf(made.faults));
    const grade = gradeDraft(exercise, made.order, handIn.steps, strictness ?? handIn.strictness);
    return { ok: true, row: gradeRow(handIn, grade) };
  } catch (error) {
    if (error instanceof CommandError) return { ok: false, reason: oneLine(error.message) };
    // One piece of work that the grader stumbles over must not stop the others.
    return refused(message('command.stumbled', { why: error instanceof Error ? error.message : String(error) }));
  }
}

function refused(said: Message): Marked {
  return { ok: false, reason: oneLine(say(said, reader)) };
}

function oneLine(text: string): string {
  return text.replace(/\s*\n\s*/g, ' ');
}
