import type { Name } from '../drafting/step.ts';
import { type WorkRow, workRow } from '../exchange/grade-row.ts';
import { type MarkedWork, type Marking, markWork } from '../exchange/mark-work.ts';
import type { Exercise } from '../grader/exercise.ts';
import type { Grade } from '../grader/result.ts';
import { type Message, message } from '../words/message.ts';
import { say } from '../words/say.ts';
import { CommandError } from './command-error.ts';
import { loadExercise } from './exercises.ts';

export type Marked =
  | { readonly ok: true; readonly work: MarkedWork; readonly row: WorkRow; readonly notMade: NotMade }
  | { readonly ok: false; readonly reason: string };

/** Targets whose step could not be carried out, each with that step's number, from 1. */
export type NotMade = ReadonlyMap<Name, number>;

const reader = { language: 'en', unit: 'in' } as const;

/** One piece of work: its text, and the file it was found in. */
interface Piece {
  readonly text: string;
  readonly file: string;
}

/** Marks one piece of work. Refuses in one line. */
export function gradePiece({ text, file }: Piece, by: Omit<Marking, 'load'>): Marked {
  const marked = markWork(text, { ...by, load });
  if (!marked.ok) return { ok: false, reason: say(marked.message, reader).replace(/\s*\n\s*/g, ' ') };
  return { ok: true, work: marked, row: workRow(file, marked, by.set), notMade: notMadeIn(marked.grade) };
}

/** The exercise, or in words what is wrong: there is none, or its file has to be mended. */
function load(name: string): Exercise | Message {
  try {
    return loadExercise(name);
  } catch (error) {
    if (error instanceof CommandError) return message('command.said', { said: error.message });
    throw error;
  }
}

function notMadeIn({ reports }: Grade): NotMade {
  return new Map(reports.flatMap(({ target, notMade }) => (notMade === null ? [] : [[target, notMade + 1] as const])));
}
