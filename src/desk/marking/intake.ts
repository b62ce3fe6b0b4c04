import { isRecord } from '../../drafting/record.ts';
import { freeHandOf } from '../../exchange/class/alike/free-hand.ts';
import { type ClassWork, classWorkOf } from '../../exchange/class/class-work.ts';
import { type Entry, entryOf } from '../../exchange/class/gradebook.ts';
import { type Sketch, sketchOf } from '../../exchange/class/laid/sketch.ts';
import { type WayGone, waysGoneIn } from '../../exchange/class/ways.ts';
import { type WorkRow, workRow } from '../../exchange/grade-row.ts';
import type { HandIn } from '../../exchange/hand-in.ts';
import { type Marking, markWork } from '../../exchange/mark-work.ts';
import { piecesIn } from '../../exchange/pieces.ts';
import { readSet } from '../../exchange/read-set.ts';
import { refusalOf } from '../../exchange/refusal.ts';
import { type ProblemSet, SET_FORMAT } from '../../exchange/set.ts';
import { type Message, message } from '../../words/message.ts';

/** A file as it was dropped on the desk. */
export interface Dropped {
  /** Its name, with the folders it lay in. */
  readonly name: string;
  readonly size: number;
  readonly text: () => Promise<string>;
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
  | { readonly ok: false; readonly where: string; readonly message: Message };

/** What becomes of a pile of files: the set they are marked by, if one lies among them, then piece after piece. */
export type Intake =
  | { readonly kind: 'set'; readonly set: ProblemSet }
  | { readonly kind: 'taken'; readonly taken: Taken }
  /** A file is done, with so many characters. */
  | { readonly kind: 'done'; readonly name: string; readonly size: number };

/** No file of the course that is not work is larger. */
const SET_SIZE = 64 * 1024;

/**
 * Takes in a pile of files: finds the set among them, or keeps to `set`, and marks every piece of work by it. One file after
 * another is held, never the pile. Files that are no work are told like work that cannot be read: nothing is dropped.
 */
export async function* takeIn(
  pile: readonly Dropped[],
  set: ProblemSet | null,
  load: Marking['load'],
  exercises: readonly string[],
): AsyncGenerator<Intake> {
  let by = set;
  const work: Dropped[] = [];
  for (const file of pile) {
    const found = file.size <= SET_SIZE ? await setIn(file, exercises) : null;
    if (found === null) work.push(file);
    else yield* [foundAs(found, file), { kind: 'done', name: file.name, size: file.size } as const];
    if (found?.ok) by = found.set;
  }
  for (const file of work) {
    for await (const taken of workIn(file, { load, set: by, strictness: null })) yield { kind: 'taken', taken };
    yield { kind: 'done', name: file.name, size: file.size };
  }
}

function foundAs(found: SetFound, { name }: Dropped): Intake {
  if (found.ok) return { kind: 'set', set: found.set };
  return { kind: 'taken', taken: { ok: false, where: name, message: found.message } };
}

type SetFound = { readonly ok: true; readonly set: ProblemSet } | { readonly ok: false; readonly message: Message };

/** The set in a file that says it is one; null for any other file. */
async function setIn(file: Dropped, exercises: readonly string[]): Promise<SetFound | null> {
  const text = await textOf(file);
  if (text === null || !saysSet(text)) return null;
  const read = readSet(text, exercises);
  return read.ok ? read : { ok: false, message: refusalOf(read.faults) };
}

function saysSet(text: string): boolean {
  try {
    const json: unknown = JSON.parse(text);
    return isRecord(json) && json['format'] === SET_FORMAT;
  } catch {
    return false;
  }
}

async function* workIn(file: Dropped, by: Marking): AsyncGenerator<Taken> {
  const text = await textOf(file);
  if (text === null) {
    yield { ok: false, where: file.name, message: message('mark.unreadable') };
    return;
  }
  for await (const piece of piecesIn(once(text))) {
    const where = piece.line === null ? file.name : `${file.name}:${piece.line}`;
    if ('refused' in piece) yield { ok: false, where, message: piece.refused };
    else yield takenOf(piece.text, where, by);
  }
}

function takenOf(text: string, where: string, by: Marking): Taken {
  const marked = markWork(text, by);
  if (!marked.ok) return { ok: false, where, message: marked.message };
  const row = workRow(where, marked, by.set);
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

/** Null where the system would not let it be read. */
async function textOf(file: Dropped): Promise<string | null> {
  try {
    return await file.text();
  } catch {
    return null;
  }
}

async function* once(text: string): AsyncGenerator<string> {
  yield await Promise.resolve(text);
}
