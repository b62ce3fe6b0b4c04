import { expect, test } from 'vitest';
import { loadExercise } from '../../../../src/cli/exercises.ts';
import { takeIn } from '../../../../src/desk/marking/intake/intake.ts';
import { refusedAt, unreadAmong } from '../../../../src/desk/marking/intake/refused.ts';
import type { Sound } from '../../../../src/desk/marking/intake/taken.ts';
import { pieceRemarks } from '../../../../src/desk/marking/piece/piece-remarks.ts';
import { LAST, theClass } from '../../../../src/desk/marking/the-class.ts';
import type { AlikeDrafts } from '../../../../src/exchange/class/alike/alike-drafts.ts';
import type { Counts } from '../../../../src/exchange/class/counting.ts';
import { gradebookOf } from '../../../../src/exchange/class/gradebook.ts';
import type { HandIn } from '../../../../src/exchange/hand-in.ts';
import { setOrder } from '../../../../src/exchange/set-order.ts';
import { setMark } from '../../../../src/exchange/write-set.ts';
import { momentText } from '../../../../src/words/moment.ts';
import { say } from '../../../../src/words/say.ts';
import { rightOverlap } from '../../../exchange/hand-ins.ts';
import { weekTwo } from '../../../exchange/sets.ts';

const set = { ...weekTwo, exercises: [{ exercise: 'overlap', marks: 10 }], checks: 2 };
const exercise = loadExercise('overlap');

/** A hand-in as the set has it, but for what is said. */
function handedIn(student: string, change: Partial<HandIn> = {}): HandIn {
  const who = { student, number: '' };
  const as = { ...who, set: setMark(set), order: setOrder(set, exercise, who), hints: {}, shown: [], checks: 1 };
  return { ...rightOverlap, ...as, saved: '2026-03-05T10:00:00.000Z', ...change };
}

async function laid(...work: readonly HandIn[]): Promise<readonly Sound[]> {
  const pieces = work.map((handIn) => ({ found: `${handIn.student}.json`, handIn }));
  const found: Sound[] = [];
  for await (const one of takeIn({ files: [], pieces }, set, () => exercise, ['overlap']))
    if (one.kind === 'taken' && one.taken.ok) found.push(one.taken);
  return found;
}

interface Given {
  readonly lost: readonly string[];
  readonly alike: readonly AlikeDrafts[];
  readonly counts: Counts;
  readonly until: readonly (readonly [string, string])[];
}

/** What is said of the piece at a place among those that lie on the desk. */
function saidOf(
  sound: readonly Sound[],
  at: number,
  { lost = [], alike = [], counts = 'last', until = [] }: Partial<Given> = {},
): readonly string[] {
  const unread = unreadAmong(lost.map((where) => refusedAt(where, { text: 'cut off', values: {} })));
  const book = gradebookOf(
    sound.map(({ entry }) => entry),
    set,
    { unread, counts, until: new Map(until) },
  );
  const about = { book, work: theClass(sound, { ...LAST, counts }), counts, set, alike, language: 'en' };
  const reader = { language: 'en', unit: 'cm' } as const;
  return pieceRemarks(sound[at] as Sound, about).map((one) => say(one, reader));
}

test('nothing is remarked on a piece that is as the set has it', async () => {
  expect(saidOf(await laid(handedIn('Ana')), 0)).toEqual([]);
});

test('an open piece has the remarks that the gradebook has, with what the set says', async () => {
  const order = setOrder(set, exercise, { student: 'Bo', number: '' });
  const late = handedIn('Ana', { order, saved: '2026-03-09T10:00:00.000Z', checks: 3 });
  const remarks = saidOf(await laid(late, handedIn('Bo')), 0);
  expect(remarks).toContain('drawn for the figure that the set gives Bo, and not for this student’s own');
  expect(remarks.find((one) => one.startsWith('late: it was to be handed in by'))).toContain(
    momentText(set.due ?? '', 'en'),
  );
  expect(remarks).toContain('checked oftener than the set allows, which is twice');
});

test('of several pieces it is said which counts', async () => {
  const both = await laid(handedIn('Ana'), handedIn('Ana', { saved: '2026-03-05T12:00:00.000Z', checks: 2 }));
  expect(saidOf(both, 0)).toEqual(['another was handed in later, and counts; this one counts for nothing']);
  expect(saidOf(both, 1)).toEqual(['handed in once before; this is the last, and counts']);
});

test('where the best counts it is said which that is', async () => {
  const narrow = rightOverlap.steps.map((step) => ({ ...step, distance: '1 cm' }));
  const worse = handedIn('Ana', { steps: narrow, saved: '2026-03-05T12:00:00.000Z', checks: 2 });
  const both = await laid(handedIn('Ana'), worse);
  expect(saidOf(both, 0, { counts: 'best' })).toEqual([
    'another was handed in besides; this one earned most, and counts',
  ]);
  expect(saidOf(both, 1, { counts: 'best' })).toEqual([
    'another earned more, or as much later, and counts; this one counts for nothing',
  ]);
});

test('who has more time is late only after it, and is told that time', async () => {
  const late = await laid(handedIn('Ana', { saved: '2026-03-09T10:00:00.000Z' }));
  const until = (moment: string) => saidOf(late, 0, { until: [['ana', moment]] });
  expect(until('2026-03-09T10:00:00.000Z')).toEqual([expect.stringMatching(/^has time until Monday/)]);
  expect(until('2026-03-08T10:00:00.000Z')).toEqual([
    expect.stringMatching(/^has time until Sunday/),
    expect.stringMatching(/^late: it was to be handed in by Sunday/),
  ]);
});

test('of a second chance it is said what was mended and what was not', async () => {
  const narrow = rightOverlap.steps.map((step) => ({ ...step, distance: '1 cm' }));
  const again = { saved: '2026-03-05T12:00:00.000Z', checks: 2 };
  const [first, second] = [handedIn('Ana', { steps: narrow }), handedIn('Ana', again)];
  expect(saidOf(await laid(first, second), 1)).toContain('mended since the one before: overlap edge');
  const spoilt = await laid(handedIn('Ana'), handedIn('Ana', { ...again, steps: narrow }));
  expect(saidOf(spoilt, 1)).toContain('right in the one before, and not any more: overlap edge');
  const still = await laid(first, handedIn('Ana', { ...again, steps: narrow }));
  expect(saidOf(still, 1)).toContain('off in the one before, and off again: overlap edge');
});

test('a file of the same student that could not be read is named', async () => {
  const [remark] = saidOf(await laid(handedIn('Ana')), 0, { lost: ['week/ana.hand-in.json'] });
  expect(remark).toContain('could not be read, and may belong here: week/ana.hand-in.json');
  expect(saidOf(await laid(handedIn('Ana')), 0, { lost: ['week/bo.hand-in.json'] })).toEqual([]);
});

test('a draft that is alike to others names them, or says how many they are, and asks', async () => {
  const names = ['Ana', 'Bo', 'Cem', 'Dai', 'Efe', 'Fay', 'Gus', 'Hal'];
  const sound = await laid(...names.map((name) => handedIn(name)));
  const students = sound.map(({ kept }) => ({ key: kept.student, who: kept.who }));
  const alike: AlikeDrafts = { exercise: 'overlap', students, numbers: 5 };
  const three = { ...alike, students: students.slice(0, 3) };
  const [remark] = saidOf(sound, 0, { alike: [three] });
  expect(remark).toContain('alike to the draft of Bo and Cem, though drawn for another figure');
  expect(remark).toContain('5 of these numbers');
  expect(saidOf(sound, 0, { alike: [alike] })[0]).toContain('alike to the drafts of 7 others');
  expect(saidOf(sound, 3, { alike: [three] })).toEqual([]);
  expect(saidOf(sound, 0, { alike: [{ ...three, exercise: 'roll-line' }] })).toEqual([]);
});

test('one that says of which exercise it is, is named at a piece of that exercise and at no other', async () => {
  const [piece] = await laid(handedIn('Ana'));
  if (!piece) throw new Error('It was not marked.');
  const remarksWith = (lost: string): number => {
    const who = { student: 'Ana', number: '' };
    const unread = [{ file: 'cut.json', who, exercise: lost, part: null }];
    const book = gradebookOf([piece.entry], set, { unread });
    return pieceRemarks(piece, { book, work: theClass([piece]), counts: 'last', set, alike: [], language: 'en' })
      .length;
  };
  expect([remarksWith('overlap'), remarksWith('swing')]).toEqual([1, 0]);
});
