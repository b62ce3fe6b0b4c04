import { describe, expect, test } from 'vitest';
import { exerciseNames, loadExercise } from '../../../../src/cli/exercises.ts';
import { shownLines } from '../../../../src/desk/marking/book/sorted.ts';
import { takeIn } from '../../../../src/desk/marking/intake/intake.ts';
import {
  added,
  begunOn,
  byOtherSet,
  leftOut,
  NOTHING,
  stopped,
  takenUp,
} from '../../../../src/desk/marking/intake/piles.ts';
import type { Dropped, Intake, Laid } from '../../../../src/desk/marking/intake/taken.ts';
import { type BookLine, gradebookOf } from '../../../../src/exchange/class/gradebook.ts';
import type { ProblemSet } from '../../../../src/exchange/set.ts';
import { handInJson, writeHandIn } from '../../../../src/exchange/write-hand-in.ts';
import { setMark, writeSet } from '../../../../src/exchange/write-set.ts';
import { rightOverlap } from '../../../exchange/hand-ins.ts';
import { weekTwo } from '../../../exchange/sets.ts';

const set = { ...weekTwo, exercises: [{ exercise: 'overlap', marks: 30 }], figures: { named: 'amara' } } as const;
const handIn = { ...rightOverlap, set: setMark(set), order: { ...rightOverlap.order, style: {} }, hints: {} };
const file = (name: string, text: string): Dropped => ({
  ...{ name, size: text.length },
  text: () => Promise.resolve(text),
  head: () => Promise.resolve(text.slice(0, 200)),
});

async function all(...pile: readonly Dropped[]): Promise<readonly Intake[]> {
  const found: Intake[] = [];
  for await (const one of takeIn({ files: pile, pieces: [] }, null, loadExercise, exerciseNames())) found.push(one);
  return found;
}

async function markedBy(by: ProblemSet | null, pieces: readonly Laid[]): Promise<readonly Intake[]> {
  const found: Intake[] = [];
  for await (const one of takeIn({ files: [], pieces }, by, loadExercise, exerciseNames())) found.push(one);
  return found;
}

describe('a pile of hand-ins', () => {
  test('is marked by the set that lies among them, wherever it lies', async () => {
    const found = await all(file('b/ilse.json', writeHandIn(handIn)), file('week-2.set.json', writeSet(set)));
    expect(found.map(({ kind }) => kind)).toEqual(['set', 'done', 'taken', 'done']);
    expect(found[2]).toMatchObject({
      taken: { ok: true, row: { file: 'b/ilse.json', inSet: { marks: 30, of: 30, remarks: [] } } },
    });
  });

  test('may have many pieces in one file, and tells what cannot be read beside them', async () => {
    const line = JSON.stringify(handInJson(handIn));
    const found = await all(file('class.ndjson', `${line}\n{"oops\n${line}\n`), file('photo.jpg', '\u0000\u0001'));
    const taken = found.flatMap((one) => (one.kind === 'taken' ? [one.taken] : []));
    expect(taken.map((one) => [one.ok, one.ok ? one.row.file : one.where])).toEqual([
      [true, 'class.ndjson:1'],
      [false, 'class.ndjson:2'],
      [true, 'class.ndjson:3'],
      [false, 'photo.jpg'],
    ]);
  });

  test('drops no file that the system will not give', async () => {
    const no = () => Promise.reject(new Error('no'));
    const lost: Dropped = { name: 'gone.json', size: 10, text: no, head: no };
    expect(await all(lost)).toMatchObject([
      { taken: { ok: false, where: 'gone.json' } },
      { kind: 'done', name: 'gone.json', size: 10 },
    ]);
  });

  test('tells of a set that cannot be used, and marks each piece by itself', async () => {
    const found = await all(
      file('a.set.json', writeSet({ ...set, exercises: [{ exercise: 'nothing', marks: 1 }] })),
      file('b.json', writeHandIn(handIn)),
    );
    expect(found[0]).toMatchObject({ taken: { ok: false, where: 'a.set.json' } });
    expect(found[2]).toMatchObject({ taken: { ok: true, row: { inSet: null } } });
  });
});

describe('what lies on the desk', () => {
  const taken = async (...pile: readonly Dropped[]) => added(NOTHING, await all(...pile));

  test('is marked again by a set that turns up after it', async () => {
    const before = await taken(file('ilse.json', writeHandIn(handIn)));
    expect(before.taken.filter(byOtherSet(before))).toEqual([]);
    const { held, pieces } = takenUp({ ...before, set }, byOtherSet({ ...before, set }));
    expect([held.taken, held.waiting.length]).toEqual([[], 1]);
    const after = added(held, await markedBy(set, pieces));
    expect(after.taken).toMatchObject([{ row: { file: 'ilse.json', inSet: { marks: 30, of: 30 } } }]);
    expect(after.waiting).toEqual([]);
  });

  test('has no piece twice, wherever it was found again, and says how many', async () => {
    const once = await taken(file('ilse.json', writeHandIn(handIn)), file('cut.json', '{"oops'));
    const twice = added(once, await all(file('copy/ilse.json', writeHandIn(handIn)), file('cut.json', '{"oops')));
    expect([twice.taken.length, twice.again]).toEqual([2, 2]);
  });

  test('tells of files that were not marked to their end, and keeps pieces that waited, to be marked later', async () => {
    const before = takenUp(await taken(file('ilse.json', writeHandIn(handIn))), ({ ok }) => ok);
    const after = stopped(before.held, ['a.json']);
    expect(after.taken).toMatchObject([
      { ok: false, where: 'a.json', message: { key: 'mark.stopped' }, handIn: null },
      { ok: false, where: 'ilse.json', message: { key: 'mark.stopped-piece' }, handIn },
    ]);
    const { held, pieces } = takenUp(after, ({ ok }) => !ok);
    expect(added(held, await markedBy(set, pieces)).taken).toMatchObject([{ where: 'a.json' }, { ok: true }]);
  });

  test('takes what could be marked at last in the place of what could not', async () => {
    const before = stopped(takenUp(await taken(file('ilse.json', writeHandIn(handIn))), ({ ok }) => ok).held, []);
    const after = added(before, await all(file('ilse.json', writeHandIn(handIn))));
    expect(after).toMatchObject({ taken: [{ ok: true }], again: 0 });
  });
});

describe('what could not be read', () => {
  const text = writeHandIn(handIn);
  const cut = text.slice(0, text.indexOf('"hints"'));
  const lying = async () => begunOn(added(NOTHING, await all(file('ilse.json', cut))));
  const placesAfter = async (...pile: readonly Dropped[]) =>
    added(await lying(), await all(...pile)).taken.map((one) => (one.ok ? 'whole' : one.where));

  test('goes when the whole of it is laid down later, wherever that lies and whenever it was saved', async () => {
    const again = writeHandIn({ ...handIn, checks: 9, saved: '2026-03-02T09:00:00.000Z' });
    expect(await placesAfter(file('mail/ilse (1).json', again))).toEqual(['whole']);
  });

  test('goes when something of the same student’s stands at its place, and for nobody else’s', async () => {
    const other = { ...handIn, steps: [] };
    expect(await placesAfter(file('ilse.json', writeHandIn(other)))).toEqual(['whole']);
    expect(await placesAfter(file('ilse.json', writeHandIn({ ...other, student: 'Bo', number: '' })))).toEqual([
      'ilse.json',
      'whole',
    ]);
  });

  test('stays beside another draft, and beside one that lay there before or came with it', async () => {
    const earlier = file('b.json', writeHandIn({ ...handIn, steps: [] }));
    expect(await placesAfter(earlier)).toEqual(['ilse.json', 'whole']);
    // Whether the whole one or the one that was cut off is the later, nothing says.
    const together = added(NOTHING, await all(file('a.json', cut), file('b.json', text)));
    expect(together.taken.map(({ ok }) => ok)).toEqual([false, true]);
    const { held, pieces } = takenUp(begunOn(together), ({ ok }) => ok);
    expect(added(held, await markedBy(set, pieces)).taken.map(({ ok }) => ok)).toEqual([false, true]);
  });

  test('is no more told of once the teacher takes it off', async () => {
    expect(leftOut(await lying(), 'ilse.json').taken).toEqual([]);
    expect(leftOut(await lying(), 'other.json').taken).toHaveLength(1);
  });
});

describe('the gradebook on the desk', () => {
  const entry = (student: string, exercise: string, marks: number, remarks: readonly 'late'[] = []) => ({
    ...{ student, number: '', exercise, marks, of: 10, saved: null, remarks, figureOf: null },
  });
  const { lines } = gradebookOf(
    [entry('Zoë', 'swing', 9), entry('Ana', 'swing', 4, ['late']), entry('Bo', 'overlap', 5)],
    null,
  );
  const names = (shown: readonly BookLine[]) => shown.map(({ student }) => student);
  const everyone = { text: '', onlyRemarked: false };

  test('is sorted by name, by the sum or by an exercise, whoever did not do it last', () => {
    expect(names(shownLines(lines, { by: 'name' }, everyone))).toEqual(['Ana', 'Bo', 'Zoë']);
    expect(names(shownLines(lines, { by: 'sum' }, everyone))).toEqual(['Zoë', 'Bo', 'Ana']);
    expect(names(shownLines(lines, { by: 'exercise', exercise: 'overlap' }, everyone))).toEqual(['Bo', 'Ana', 'Zoë']);
  });

  test('shows those whose name has the letters, however they are written, or those with a remark', () => {
    expect(names(shownLines(lines, { by: 'name' }, { text: 'ZOE', onlyRemarked: false }))).toEqual(['Zoë']);
    expect(names(shownLines(lines, { by: 'name' }, { text: '', onlyRemarked: true }))).toEqual(['Ana']);
  });
});
