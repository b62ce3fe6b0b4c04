import { describe, expect, test } from 'vitest';
import { loadExercise } from '../../../src/cli/exercises.ts';
import type { Step } from '../../../src/drafting/step.ts';
import { type Wayfarer, waysGoneIn, waysTaken, wayWords } from '../../../src/exchange/class/ways.ts';
import { gradeDraft } from '../../../src/grader/grade.ts';
import { misread } from '../../../src/grader/misreading.ts';
import { orderFor } from '../../../src/grader/order-for.ts';
import { say } from '../../../src/words/say.ts';

const roll = loadExercise('roll-line');
const reader = { language: 'en', unit: 'in' } as const;

function wrong(id: string): readonly Step[] {
  const misreading = roll.misreadings.find((one) => one.id === id);
  if (!misreading) throw new Error(`There is no misreading ${id}.`);
  return misread(roll.reference, misreading);
}

function draft(student: string, steps: readonly Step[]): Wayfarer {
  const grade = gradeDraft(roll, orderFor(roll, student), steps, 'workroom');
  return { student, exercise: 'roll-line', ways: waysGoneIn(grade) };
}

describe('the short name of a wrong way', () => {
  test('is the exercise’s own, but for what the grader knows everywhere', () => {
    const named = (id: string) => say(wayWords(id), reader);
    expect(named('through-neck-point')).toBe('through neck point');
    expect(named('by-full')).toBe('another house’s rule');
    expect(named('by-the-fall')).toBe('by the fall');
    expect(named('taken-for-break-point')).toBe('taken for the break point');
  });
});

describe('the wrong ways that a class went', () => {
  test('name those who went them in the order of their numbers', () => {
    const taken = waysTaken(['#11', '#7', '#102'].map((student) => draft(student, wrong('no-stand'))));
    expect(taken.map(({ students }) => students)).toEqual([['#7', '#11', '#102']]);
  });

  test('are told with everyone who went them, the most gone first, in the words of the exercise', () => {
    const taken = waysTaken([
      draft('ana', roll.reference),
      draft('bo', wrong('no-stand')),
      draft('cem', wrong('through-neck-point')),
      draft('dai', wrong('through-neck-point')),
    ]);
    expect(taken.map(({ target, id, students }) => [target, id, students])).toEqual([
      ['roll-line', 'through-neck-point', ['cem', 'dai']],
      ['stand-point', 'no-stand', ['bo']],
    ]);
    expect(taken.map(({ says }) => say(says, reader))[1]).toBe(
      'You point out the neck point itself: no stand was added. The collar would have no room to stand up before turning over, and would lie flat at the shoulder. Go on along the shoulder line past the neck point, 1 1/4 in left.',
    );
  });

  test('are said as they were said to the one in the middle', () => {
    const far = (student: string, off: number): Wayfarer => ({
      student,
      exercise: 'overlap',
      ways: [{ target: 'overlap-edge', id: 'not-added', says: { text: student, values: {} }, off }],
    });
    expect(waysTaken([far('far', 9), far('middle', 4), far('near', 2)])).toMatchObject([{ to: 'middle' }]);
    expect(waysTaken([far('far', 9), far('near', 2)])).toMatchObject([{ to: 'near' }]);
  });

  test('are told once of a target, however many of its checks they show at', () => {
    const [taken, ...more] = waysTaken([draft('bo', wrong('on-centre-front'))]);
    expect(more).toEqual([]);
    expect(taken).toMatchObject({ id: 'on-centre-front', students: ['bo'], to: 'bo' });
  });

  test('of a class that is right are none', () => {
    expect(waysTaken([draft('ana', roll.reference)])).toEqual([]);
  });
});
