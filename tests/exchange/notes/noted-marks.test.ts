import { describe, expect, test } from 'vitest';
import { loadExercise } from '../../../src/cli/exercises.ts';
import { entryOf } from '../../../src/exchange/class/gradebook.ts';
import { workRow } from '../../../src/exchange/grade-row.ts';
import { markWork } from '../../../src/exchange/mark-work.ts';
import { looseMarks, notedEntry, ownTotal, targetMarks } from '../../../src/exchange/notes/noted-marks.ts';
import { type PieceNotes, UNTOUCHED, withMark } from '../../../src/exchange/notes/notes.ts';
import { writeHandIn } from '../../../src/exchange/write-hand-in.ts';
import { weekTwo } from '../sets.ts';

const roll = loadExercise('roll-line');
const set = { ...weekTwo, exercises: [{ exercise: 'roll-line', marks: 50 }] };

/** A draft of the roll line of which only the first steps were drawn. */
function rowOf(steps: number, inSet: typeof set | null) {
  const text = writeHandIn({
    ...{ student: 'Ilse', number: '', set: null, exercise: 'roll-line', strictness: 'workroom', unit: 'cm' },
    order: { figure: { named: 'amara' }, style: {}, house: {} },
    ...{ steps: roll.reference.slice(0, steps), shown: [], hints: {}, checks: 0, begun: null, saved: null },
  });
  const marked = markWork(text, { load: () => roll, set: inSet, strictness: null });
  if (!marked.ok) throw new Error('The draft could not be marked.');
  return workRow('ilse.json', marked, inSet);
}

const row = rowOf(2, set);
const targets = targetMarks(row.checks, UNTOUCHED);
const last = targets.at(-1);
if (!last) throw new Error('The roll line has no targets.');
const of = last.of;
const half: PieceNotes = withMark(UNTOUCHED, last.target, { marks: of / 2, of, reason: 'Ruled on paper.' });

describe('the marks of a piece of work', () => {
  test('are the grader’s, target by target, and come to what the grader gave', () => {
    expect(targets.map(({ target }) => target)).toEqual(roll.targets.map(({ name }) => name));
    expect(targets.reduce((sum, { grader }) => sum + grader, 0)).toBe(row.marks);
    expect(targets.reduce((sum, one) => sum + one.of, 0)).toBe(row.of);
    expect(ownTotal(row.checks, UNTOUCHED)).toBeNull();
  });

  test('are the teacher’s where she gave others, and the grader’s are kept beside them', () => {
    expect(targetMarks(row.checks, half).at(-1)).toMatchObject({ grader: 0, own: { marks: of / 2 } });
    expect(ownTotal(row.checks, half)).toBe(row.marks + of / 2);
  });

  test('count in the scale of the set, and say what the grader gave', () => {
    const entry = entryOf(row);
    const noted = notedEntry(entry, row, half);
    expect(noted.grader).toBe(entry.marks);
    expect(noted.marks).toBeCloseTo(((row.marks + of / 2) / row.of) * 50, 10);
    const alone = rowOf(2, null);
    expect(notedEntry(entryOf(alone), alone, half).marks).toBe(alone.marks + of / 2);
  });

  test('are the very same where nothing was changed, or was taken back', () => {
    const entry = entryOf(row);
    expect(notedEntry(entry, row, UNTOUCHED)).toBe(entry);
    expect(notedEntry(entry, row, withMark(half, last.target, null))).toBe(entry);
    expect(notedEntry(entry, row, { ...UNTOUCHED, comment: 'Well drawn.' })).toBe(entry);
  });

  test('leave out a mark for a target that is gone, or is worth something else now, and it can be told', () => {
    const gone = withMark(UNTOUCHED, 'pocket', { marks: 1, of: 2, reason: 'Neat.' });
    const other = withMark(UNTOUCHED, last.target, { marks: 1, of: of + 1, reason: 'Neat.' });
    for (const notes of [gone, other]) {
      expect(ownTotal(row.checks, notes)).toBeNull();
      expect(looseMarks(row.checks, notes)).toEqual(Object.entries(notes.marks));
    }
    expect(looseMarks(row.checks, half)).toEqual([]);
  });
});
