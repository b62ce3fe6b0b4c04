import { describe, expect, test } from 'vitest';
import { loadExercise } from '../../../../src/cli/exercises.ts';
import { takeIn } from '../../../../src/desk/marking/intake/intake.ts';
import type { Sound } from '../../../../src/desk/marking/intake/taken.ts';
import { studentWork } from '../../../../src/desk/marking/sheets/student-work.ts';
import { theClass } from '../../../../src/desk/marking/the-class.ts';
import { gradebookOf } from '../../../../src/exchange/class/gradebook.ts';
import type { HandIn } from '../../../../src/exchange/hand-in.ts';
import { rightOverlap } from '../../../exchange/hand-ins.ts';

const early: HandIn = { ...rightOverlap, order: { ...rightOverlap.order, style: {} } };
const late: HandIn = { ...early, steps: [], saved: '2026-02-20T09:30:00.000Z' };
const bo: HandIn = { ...early, student: 'Bo', number: '' };

/** The sheet of everyone whose work this is, as exercise and the date of the piece that is told of. */
async function sheetsOf(handIns: readonly HandIn[], ofSet: readonly string[]) {
  const pieces = handIns.map((handIn, at) => ({ found: `${at}.json`, handIn }));
  const sound: Sound[] = [];
  for await (const one of takeIn({ files: [], pieces }, null, loadExercise, []))
    if (one.kind === 'taken' && one.taken.ok) sound.push(one.taken);
  const book = gradebookOf(
    sound.map(({ entry }) => entry),
    null,
  );
  const work = theClass(sound);
  return book.lines.map((line) =>
    studentWork(line, { ...book, exercises: [...ofSet, 'overlap'] }, work, ofSet).map(({ exercise, counted: one }) => [
      exercise,
      one?.piece.handIn.saved ?? null,
      one?.entry.saved ?? null,
    ]),
  );
}

describe('what a student’s sheet tells of', () => {
  test('is the piece that the gradebook counts, wherever it lay', async () => {
    const told = [['overlap', late.saved, late.saved]];
    expect(await sheetsOf([late, early], [])).toEqual([told]);
    expect(await sheetsOf([early, late], [])).toEqual([told]);
  });

  test('is everybody’s own', async () => {
    expect(await sheetsOf([late, bo], [])).toEqual([
      [['overlap', bo.saved, bo.saved]],
      [['overlap', late.saved, late.saved]],
    ]);
  });

  test('is also what the set asks for and was not handed in, and nothing that is not of the set and nobody asked for', async () => {
    expect(await sheetsOf([bo], ['swing'])).toEqual([
      [
        ['swing', null, null],
        ['overlap', bo.saved, bo.saved],
      ],
    ]);
  });
});
