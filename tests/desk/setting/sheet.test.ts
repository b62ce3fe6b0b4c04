import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import {
  asWritten,
  freshSheet,
  moved,
  printSheet,
  ruled,
  takeUpSheet,
  toggled,
  withoutStrayRules,
  worth,
} from '../../../src/desk/setting/sheet.ts';
import { readSet } from '../../../src/exchange/read-set.ts';
import { writeSet } from '../../../src/exchange/write-set.ts';
import { say } from '../../../src/words/say.ts';

const known = ['overlap', 'roll-line', 'swing', 'notch-level'];
const fresh = freshSheet('Week 2', 'b');
const full = known.reduce((sheet, exercise) => toggled(sheet, { exercise, marks: 5 }), fresh);
const order = (sheet: typeof fresh): readonly string[] => sheet.exercises.map(({ exercise }) => exercise);

describe('the work sheet', () => {
  test('is no set before it has an exercise, and is one then', () => {
    expect(readSet(writeSet(fresh), known).ok).toBe(false);
    expect(readSet(writeSet(full), known)).toEqual({ ok: true, set: full });
  });

  test('takes an exercise at its end, and off again', () => {
    expect(order(full)).toEqual(known);
    expect(order(toggled(full, { exercise: 'roll-line', marks: 5 }))).toEqual(['overlap', 'swing', 'notch-level']);
  });

  test('moves an exercise no further than to its ends, and loses none', () => {
    expect(order(moved(full, 'swing', -1))).toEqual(['overlap', 'swing', 'roll-line', 'notch-level']);
    fc.assert(
      fc.property(fc.constantFrom(...known), fc.integer({ min: -9, max: 9 }), (exercise, by) => {
        const after = order(moved(full, exercise, by));
        expect(after.toSorted()).toEqual(known.toSorted());
        expect(after.indexOf(exercise)).toBe(Math.min(3, Math.max(0, known.indexOf(exercise) + by)));
      }),
    );
  });

  test('gives an exercise its marks and leaves the others theirs', () => {
    expect(worth(full, 'swing', 12).exercises.map(({ marks }) => marks)).toEqual([5, 5, 12, 5]);
  });

  test('sets a house rule, changes it, and leaves it to the exercises again', () => {
    const once = ruled(ruled(full, 'stand-rule', 'full'), 'stand-rule', 'quarter-inch-less');
    expect(once.house).toEqual({ 'stand-rule': 'quarter-inch-less' });
    expect(ruled(once, 'stand-rule', null)).toEqual(full);
  });

  test('hands out no house rule that none of its exercises has', () => {
    const ruled = { ...full, house: { 'stand-rule': 'full', 'overlap-rule': 'given' } };
    expect(withoutStrayRules(ruled, ['stand-rule']).house).toEqual({ 'stand-rule': 'full' });
  });

  test('is a set that everyone can read, whatever is pasted into it', () => {
    const pasted = asWritten({ ...full, title: 'Week\t2\nroll line\u0007', note: 'Bring:\r\n\tmuslin\u000b' });
    expect(pasted).toMatchObject({ title: 'Week 2 roll line', note: 'Bring:\n muslin' });
    expect(readSet(writeSet(pasted), known)).toEqual({ ok: true, set: pasted });
    expect(takeUpSheet(printSheet(pasted), known)).toEqual(pasted);
  });

  test('is taken up as it was left, without a title and without exercises too', () => {
    for (const sheet of [full, fresh, { ...fresh, title: '' }]) {
      expect(takeUpSheet(printSheet(sheet), known)).toEqual(sheet);
    }
  });

  test('is given as it was kept, with why, where it cannot be read, and is begun afresh only where there is nothing', () => {
    const whyOf = (text: string, exercises = known) => {
      const found = takeUpSheet(text, exercises);
      if (found === null || !('why' in found)) throw new Error('It was read.');
      expect(found.text).toBe(text);
      return say(found.why, { language: 'en', unit: 'cm' });
    };
    expect(whyOf(printSheet(full).slice(0, -9))).toMatch(/^This is not a whole file of the course/);
    expect(whyOf('')).toMatch(/^The file is empty/);
    const left = known.filter((name) => name !== 'swing');
    expect(whyOf(printSheet(full), left)).toMatch(/exercises\[2\].*This copy of the course has no exercise “swing”/);
    expect(takeUpSheet(null, known)).toBeNull();
  });
});
