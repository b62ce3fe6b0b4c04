import type { Name } from '../drafting/step.ts';
import { type WorkRow, workRow } from '../exchange/grade-row.ts';
import { type MarkedWork, type Marking, markWork } from '../exchange/mark-work.ts';
import { strangeExercise } from '../exchange/strange-exercise.ts';
import type { Exercise } from '../grader/exercise.ts';
import type { Grade } from '../grader/result.ts';
import { type Message, message } from '../words/message.ts';
import { say } from '../words/say.ts';
import { CommandError } from './command-error.ts';
import { exerciseNames, loadExercise } from './exercises.ts';

export type Marked =
  | { readonly ok: true; readonly work: MarkedWork; readonly row: WorkRow; readonly notMade: NotMade }
  | {
      readonly ok: false;
      readonly reason: string;
      /** The exercise that it names, where the course has none of that name. */
      readonly strange: Name | null;
    };

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
  if (!marked.ok) {
    const named = marked.handIn?.exercise ?? null;
    const strange = named === null || isKnown(named) ? null : named;
    return { ok: false, reason: say(marked.message, reader).replace(/\s*\n\s*/g, ' '), strange };
  }
  return { ok: true, work: marked, row: workRow(file, marked, by.set), notMade: notMadeIn(marked.grade) };
}

/** The names of all exercises, asked for once: a stream may be long. */
let names: readonly string[] | null = null;

function known(): readonly string[] {
  names ??= exerciseNames();
  return names;
}

function isKnown(name: string): boolean {
  return known().includes(name);
}

/** The exercise, or in words what is wrong: there is none, or its file has to be mended. */
function load(name: string): Exercise | Message {
  if (!isKnown(name)) return strangeExercise(name, known());
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
