import { describe, expect, test } from 'vitest';
import { loadExercise } from '../../../../src/cli/exercises.ts';
import { type Told, toldOf } from '../../../../src/desk/marking/sheets/told.ts';
import type { HandIn } from '../../../../src/exchange/hand-in.ts';
import { markHandIn } from '../../../../src/exchange/mark-work.ts';
import { type PieceNotes, UNTOUCHED, withMark } from '../../../../src/exchange/notes/notes.ts';
import { rightOverlap } from '../../../exchange/hand-ins.ts';

const roll = loadExercise('roll-line');
const targets = roll.targets.map(({ name }) => name);

/** What is told of the first steps of the roll line. */
function told(steps: number, notes: PieceNotes = UNTOUCHED): Told {
  const order: HandIn['order'] = { figure: { named: 'amara' }, style: {}, house: {} };
  const handIn: HandIn = {
    ...rightOverlap,
    exercise: 'roll-line',
    order,
    hints: {},
    steps: roll.reference.slice(0, steps),
  };
  const marked = markHandIn(handIn, { load: () => roll, set: null, strictness: null });
  if (!marked.ok) throw new Error('It could not be marked.');
  return toldOf(marked.grade, marked.grade.checks, notes);
}

const names = ({ notes }: Told) => notes.map(({ report }) => report.target);

describe('a sheet', () => {
  test('tells first what went right, and then at length what is off', () => {
    const some = told(3);
    expect(some.right.length).toBeGreaterThan(0);
    expect([...some.right, ...names(some)]).toEqual(targets);
  });

  test('tells nothing at length where everything is right', () => {
    expect([told(roll.reference.length).right, names(told(roll.reference.length))]).toEqual([targets, []]);
  });

  test('tells at length of a right answer for which the teacher gave another mark, with both marks', () => {
    const [first = ''] = targets;
    const of = told(0).notes.find(({ marks }) => marks?.target === first)?.marks?.of ?? 0;
    const notes = withMark(UNTOUCHED, first, { marks: 1, of, reason: 'By eye.' });
    expect(told(roll.reference.length, notes).notes).toMatchObject([
      { report: { target: first, status: 'within' }, marks: { grader: of, own: { marks: 1, reason: 'By eye.' } } },
    ]);
  });
});
