import { begunText } from '../../../exchange/beginning.ts';
import { freeHandOf } from '../../../exchange/class/alike/free-hand.ts';
import { classWorkOf } from '../../../exchange/class/class-work.ts';
import { entryOf } from '../../../exchange/class/gradebook.ts';
import { sketchOf } from '../../../exchange/class/laid/sketch.ts';
import { waysGoneIn } from '../../../exchange/class/ways.ts';
import { workRow } from '../../../exchange/grade-row.ts';
import { type Marking, markHandIn, markWork, type WorkMarking } from '../../../exchange/mark-work.ts';
import { handInLine } from '../../../exchange/notes/draft-key.ts';
import { piecesIn } from '../../../exchange/pieces.ts';
import type { ProblemSet } from '../../../exchange/set.ts';
import { message } from '../../../words/message.ts';
import { besideWork, givenBy } from './beside-work.ts';
import { refusedAt } from './refused.ts';
import type { Dropped, Intake, Pile, Taken } from './taken.ts';

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
