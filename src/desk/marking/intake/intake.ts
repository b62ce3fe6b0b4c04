import { begunText } from '../../../exchange/beginning.ts';
import { freeHandOf } from '../../../exchange/class/alike/free-hand.ts';
import { type ClassWork, classWorkOf } from '../../../exchange/class/class-work.ts';
import { type Entry, entryOf } from '../../../exchange/class/gradebook.ts';
import { type Sketch, sketchOf } from '../../../exchange/class/laid/sketch.ts';
import { type WayGone, waysGoneIn } from '../../../exchange/class/ways.ts';
import { type WorkRow, workRow } from '../../../exchange/grade-row.ts';
import type { HandIn } from '../../../exchange/hand-in.ts';
import { type Marking, markHandIn, markWork, type WorkMarking } from '../../../exchange/mark-work.ts';
import type { MarkingFile } from '../../../exchange/marking-file/marking-file.ts';
import { handInLine } from '../../../exchange/notes/draft-key.ts';
import { piecesIn } from '../../../exchange/pieces.ts';
import type { ProblemSet } from '../../../exchange/set.ts';
import { message } from '../../../words/message.ts';
import { besideWork, givenBy } from './beside-work.ts';
import { type Refused, refusedAt } from './refused.ts';

/** A file as it was dropped on the desk. */
export interface Dropped {
  /** Its name, with the folders it lay in. */
  readonly name: string;
  readonly size: number;
  readonly text: () => Promise<string>;
  /** The beginning of its text. */
  readonly head: () => Promise<string>;
}

/** A piece of work that was read already. */
export interface Laid {
  readonly found: string;
  readonly handIn: HandIn;
}

/** What is taken in: files as they were dropped, and pieces that lay there before. */
export interface Pile {
  readonly files: readonly Dropped[];
  readonly pieces: readonly Laid[];
}

/** What is said of one piece of work that was taken in. */
export type Taken =
  | {
      readonly ok: true;
      readonly handIn: HandIn;
      readonly row: WorkRow;
      readonly entry: Entry;
      readonly kept: ClassWork;
      readonly sketch: Sketch;
      readonly ways: readonly WayGone[];
    }
  | Refused;

/** What becomes of a pile: the set it is marked by, if one lies among the files, then piece after piece. */
export type Intake =
  | { readonly kind: 'set'; readonly set: ProblemSet }
  /** A marking file that was saved before: its pieces are not marked yet. Its set has been told of before it. */
  | { readonly kind: 'marking'; readonly file: MarkingFile }
  | { readonly kind: 'taken'; readonly taken: Taken }
  /** A file is done, with so many characters. */
  | { readonly kind: 'done'; readonly name: string; readonly size: number };

/**
 * Takes in a pile: finds the set among its files, or keeps to `set`, and marks every piece of work by it. One file after
 * another is held, never all of them. Files that are no work are told like work that cannot be read: nothing is dropped.
 */
export async function* takeIn(
  { files, pieces }: Pile,
  set: ProblemSet | null,
  load: Marking['load'],
  exercises: readonly string[],
): AsyncGenerator<Intake> {
  let by = set;
  const work: Dropped[] = [];
  for (const file of files) {
    const found = await besideWork(file, exercises);
    if (found === null) work.push(file);
    else yield* [...found, { kind: 'done', name: file.name, size: file.size } as const];
    by = found?.find((one) => one.kind === 'set')?.set ?? by;
  }
  const marking = { load, set: by, strictness: null };
  for (const { found, handIn } of pieces) {
    yield { kind: 'taken', taken: takenOf(markHandIn(handIn, marking), found, by) };
    yield { kind: 'done', name: found, size: handInLine(handIn).length };
  }
  for (const file of work) {
    for await (const taken of workIn(file, marking)) yield { kind: 'taken', taken };
    yield { kind: 'done', name: file.name, size: file.size };
  }
}

async function* workIn(file: Dropped, by: Marking): AsyncGenerator<Taken> {
  const text = await givenBy(file.text);
  if (text === null) {
    yield refusedAt(file.name, message('mark.unreadable'));
    return;
  }
  for await (const piece of piecesIn(once(text))) {
    const where = piece.line === null ? file.name : `${file.name}:${piece.line}`;
    if ('refused' in piece) yield refusedAt(where, piece.refused);
    else yield takenFrom(piece.text, where, by);
  }
}

function takenFrom(text: string, where: string, by: Marking): Taken {
  const taken = takenOf(markWork(text, by), where, by.set);
  return taken.ok ? taken : { ...taken, begun: begunText(text) };
}

function takenOf(marked: WorkMarking, where: string, set: ProblemSet | null): Taken {
  if (!marked.ok) return { ...refusedAt(where, marked.message), handIn: marked.handIn };
  const row = workRow(where, marked, set);
  return {
    ok: true,
    handIn: marked.handIn,
    row,
    entry: entryOf(row),
    kept: classWorkOf(row, freeHandOf(marked)),
    sketch: sketchOf(marked),
    ways: waysGoneIn(marked.grade),
  };
}

async function* once(text: string): AsyncGenerator<string> {
  yield await Promise.resolve(text);
}
