import { describe, expect, test } from 'vitest';
import { exerciseNames, loadExercise } from '../../../src/cli/exercises.ts';
import { filed, filedText } from '../../../src/desk/marking/filed.ts';
import { takeIn } from '../../../src/desk/marking/intake/intake.ts';
import { added, type Held, NOTHING, opened, stopped } from '../../../src/desk/marking/intake/piles.ts';
import { unreadAmong, wholeBeside } from '../../../src/desk/marking/intake/refused.ts';
import type { Dropped, Intake } from '../../../src/desk/marking/intake/taken.ts';
import { draftKey } from '../../../src/exchange/notes/draft-key.ts';
import { withMark, withPiece, withStudent } from '../../../src/exchange/notes/notes.ts';
import { writeHandIn } from '../../../src/exchange/write-hand-in.ts';
import { setMark, writeSet } from '../../../src/exchange/write-set.ts';
import { message } from '../../../src/words/message.ts';
import { say } from '../../../src/words/say.ts';
import { rightOverlap } from '../../exchange/hand-ins.ts';
import { weekTwo } from '../../exchange/sets.ts';

const set = { ...weekTwo, exercises: [{ exercise: 'overlap', marks: 30 }], figures: { named: 'amara' } } as const;
const ilse = { ...rightOverlap, set: setMark(set), order: { ...rightOverlap.order, style: {} }, hints: {} };
const bo = { ...ilse, student: 'Bo', number: '' };
const reader = { language: 'en', unit: 'cm' } as const;
const SAVED = '2026-03-08T18:00:00.000Z';

function file(name: string, text: string): Dropped {
  return {
    ...{ name, size: text.length },
    text: () => Promise.resolve(text),
    head: () => Promise.resolve(text.slice(0, 200)),
  };
}

async function intakeOf(...files: readonly Dropped[]): Promise<readonly Intake[]> {
  const found: Intake[] = [];
  for await (const one of takeIn({ files, pieces: [] }, null, loadExercise, exerciseNames())) found.push(one);
  return found;
}

/** A desk on which a class's work lies, with a mark by hand and comments. */
async function deskOfAClass(): Promise<Held> {
  const held = added(
    NOTHING,
    await intakeOf(
      file('week-2.set.json', writeSet(set)),
      file('ilse.json', writeHandIn(ilse)),
      file('bo.json', writeHandIn(bo)),
      file('cut.json', '{"oops'),
    ),
  );
  const mark = { marks: 1, of: 6, reason: 'Traced.' };
  const read = held.taken.find(({ handIn }) => handIn?.student === 'Bo')?.handIn ?? bo;
  const marked = withPiece(held.notes, draftKey(read), (now) => withMark(now, 'overlap-edge', mark));
  return { ...held, notes: withStudent(marked, { student: 'Bo', number: '' }, { comment: 'Measure.' }) };
}

/** What the desk makes of a marking file, before its pieces are marked. */
async function openedOn(held: Held, text: string): Promise<ReturnType<typeof opened>> {
  const found = await intakeOf(file('week-2.marking.json', text));
  const [marking] = found.flatMap((one) => (one.kind === 'marking' ? [one.file] : []));
  if (!marking) throw new Error(`Refused: ${JSON.stringify(found)}`);
  return opened(added(held, found), marking);
}

describe('all the work on the desk, filed and opened', () => {
  test('is the same work, and waits to be marked again', async () => {
    const held = await deskOfAClass();
    const { held: again, pieces } = await openedOn(NOTHING, filedText(held, SAVED) ?? '');
    expect(pieces.map(({ found }) => found)).toEqual(['ilse.json', 'bo.json']);
    expect(again).toMatchObject({
      set,
      waiting: pieces,
      taken: [{ where: 'cut.json' }],
    });
    expect(again.notes).toEqual(held.notes);
    // Before it is marked, too, and after marking was stopped, nothing of it would be lost.
    for (const one of [again, stopped(again, [])]) expect(filed(one, SAVED)).toEqual(filed(held, SAVED));
  });

  test('keeps why something could not be read, however often it is filed, and whether it was looked at', async () => {
    const held = stopped(await deskOfAClass(), ['late.json']);
    const whyIn = ({ taken }: Held) => taken.flatMap((one) => (one.ok ? [] : [say(one.message, reader)]));
    const { held: again } = await openedOn(NOTHING, filedText(held, SAVED) ?? '');
    const { held: third } = await openedOn(NOTHING, filedText(again, SAVED) ?? '');
    const [why] = whyIn(held);
    expect(why).toContain('It is cut off there');
    expect(whyIn(again)).toEqual([why, say(message('mark.was-unread'), reader)]);
    expect(whyIn(third)).toEqual(whyIn(again));
  });

  test('keeps of what was cut off whose it is', async () => {
    const text = writeHandIn(bo);
    const held = added(NOTHING, await intakeOf(file('cut.json', text.slice(0, text.indexOf('"side"')))));
    const { held: again } = await openedOn(NOTHING, filedText(held, SAVED) ?? '');
    expect(unreadAmong(again.taken)).toMatchObject([
      { file: 'cut.json', who: { student: 'Bo', number: '' }, exercise: 'overlap' },
    ]);
    expect(added(again, await intakeOf(file('bo.json', text))).taken).toMatchObject([{ ok: true }]);
    // Dropped together the file is told of, and nobody has a remark.
    const both = added(NOTHING, await intakeOf(file('cut.json', text.slice(0, -60)), file('bo.json', text)));
    expect(both.taken).toHaveLength(2);
    expect(unreadAmong(both.taken)).toEqual([]);
    expect([...wholeBeside(both.taken)].map(({ where }) => where)).toEqual(['cut.json']);
    const other = writeHandIn({ ...bo, student: 'Cem' });
    const apart = added(NOTHING, await intakeOf(file('cut.json', text.slice(0, -60)), file('cem.json', other)));
    expect(unreadAmong(apart.taken)).toHaveLength(1);
    expect(wholeBeside(apart.taken).size).toBe(0);
  });

  test('adds nothing to a desk on which it lies already, and says so', async () => {
    const held = await deskOfAClass();
    const { held: again, pieces } = await openedOn(held, filedText(held, SAVED) ?? '');
    expect(pieces).toEqual([]);
    expect(again).toEqual({ ...held, again: 2 });
  });

  test('is refused whole where a part does not fit, and told like any file that cannot be read', async () => {
    const text = (filedText(await deskOfAClass(), SAVED) ?? '').replace('"reason":"Traced."', '"reason":""');
    expect(await intakeOf(file('week-2.marking.json', text))).toMatchObject([
      { kind: 'taken', taken: { ok: false, where: 'week-2.marking.json', handIn: null } },
      { kind: 'done' },
    ]);
  });

  test('is null where it is more than a marking file holds', async () => {
    const held = await deskOfAClass();
    const many = Array.from({ length: 20_001 }, (_, at) => ({ found: `${at}.json`, handIn: ilse }));
    expect(filedText({ ...held, waiting: many }, SAVED)).toBeNull();
  });
});
