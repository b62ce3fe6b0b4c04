import { describe, expect, test } from 'vitest';
import { draftKey } from '../../../src/exchange/notes/draft-key.ts';
import { mergedNotes } from '../../../src/exchange/notes/merge-notes.ts';
import { NO_NOTES, withMark, withOtherList, withPiece, withStudent } from '../../../src/exchange/notes/notes.ts';
import { rightOverlap } from '../hand-ins.ts';
import { evening } from '../marking-file/marking-files.ts';

const key = draftKey(rightOverlap);
const opened = mergedNotes(NO_NOTES, evening);

describe('a marking file laid on the desk', () => {
  test('brings what was written, and again brings nothing new', () => {
    expect(opened.notes.pieces.get(key)?.comment).toBe('Well squared.');
    expect(opened.notes.students.get('#17')?.comment).toContain('Next week');
    expect(mergedNotes(opened.notes, evening)).toEqual({ notes: opened.notes, clashes: 0 });
  });

  test('takes nothing from what lay there, adds what did not, and counts where the two differ', () => {
    const mine = withPiece(NO_NOTES, key, (now) => ({ ...now, comment: 'Mine.' }));
    const marked = withPiece(NO_NOTES, key, (now) =>
      withMark(now, 'overlap-edge', { marks: 2, of: 6, reason: 'Mine.' }),
    );
    expect(mergedNotes(marked, evening)).toMatchObject({ clashes: 1 });
    expect(mergedNotes(marked, evening).notes.pieces.get(key)).toMatchObject({
      marks: { 'overlap-edge': { marks: 2, reason: 'Mine.' } },
      comment: 'Well squared.',
    });
    const merged = mergedNotes(
      withStudent(mine, { student: 'Ilse', number: '17' }, { comment: 'Also mine.' }),
      evening,
    );
    expect(merged.notes.pieces.get(key)).toMatchObject({ comment: 'Mine.', marks: { 'overlap-edge': { marks: 4 } } });
    expect(merged.notes.students.get('#17')?.comment).toBe('Also mine.');
    expect(merged.clashes).toBe(2);
  });

  test('brings the time given to a student and the way of counting, and takes neither from the desk', () => {
    const who = { student: 'Ilse', number: '17' };
    const [given, other] = ['2026-03-13T17:00:00.000Z', '2026-03-20T17:00:00.000Z'];
    const students = evening.students.map((one) => ({ ...one, until: given }));
    const file = { ...evening, students, counts: 'best' as const };
    const merged = mergedNotes(withStudent(NO_NOTES, who, { comment: 'Mine.' }), file);
    expect(merged.notes.students.get('#17')).toMatchObject({ comment: 'Mine.', until: given });
    expect([merged.notes.counts, merged.clashes]).toEqual(['best', 1]);
    const own = mergedNotes(
      { ...withStudent(NO_NOTES, who, { until: other }), counts: 'best' },
      { ...file, counts: 'last' },
    );
    expect(own.notes.students.get('#17')).toMatchObject({ comment: students[0]?.comment, until: other });
    expect([own.notes.counts, own.clashes]).toEqual(['best', 1]);
    // Time taken back, and no word to the student: nothing is left to be kept.
    expect(withStudent(withStudent(NO_NOTES, who, { until: other }), who, { until: null }).students.size).toBe(0);
  });

  test('lays another class list beside that of the desk, where the two can change places', () => {
    const there = { ...NO_NOTES, list: 'Ada\nBo' };
    const { notes } = mergedNotes(there, evening);
    expect([notes.list, notes.otherList]).toEqual([there.list, evening.list]);
    expect(withOtherList(notes)).toMatchObject({ list: evening.list, otherList: there.list });
    expect(mergedNotes(there, { ...evening, list: there.list }).notes.otherList).toBe('');
    expect(mergedNotes(NO_NOTES, evening).notes).toMatchObject({ list: evening.list, otherList: '' });
  });
});

test('a draft that is handed in again unchanged is known as the same, and a changed one is not', () => {
  const again = { ...rightOverlap, saved: '2026-02-20T09:30:00.000Z', checks: 9, hints: {} };
  expect(draftKey(again)).toBe(key);
  expect(draftKey({ ...rightOverlap, steps: [] })).not.toBe(key);
  expect(draftKey({ ...rightOverlap, number: '18' })).not.toBe(key);
  const { order } = rightOverlap;
  expect(draftKey({ ...rightOverlap, order: { ...order, style: {} } })).not.toBe(key);
  expect(draftKey({ ...rightOverlap, order: { ...order, house: { measured: 'otherwise' } } })).not.toBe(key);
  expect(draftKey({ ...rightOverlap, order: { ...order, figure: { named: 'somebody' } } })).not.toBe(key);
});
