import { expect, test } from 'vitest';
import { loadExercise } from '../../src/cli/exercises.ts';
import { statusOf } from '../../src/grader/bounds.ts';
import { gradeDraft } from '../../src/grader/grade.ts';
import { orderOn, sampled } from './tables.ts';

test('what is off by exactly a tolerance is within it, and by exactly two is near, whatever the last bits say', () => {
  expect([3, 3.000000000000007, 3.0001].map((off) => statusOf(off, 3))).toEqual(['within', 'within', 'near']);
  expect([6, 6.000000000000007, 6.0001].map((off) => statusOf(off, 3))).toEqual(['near', 'near', 'beyond']);
});

// 3 1/2 in less 1 in, and 3 mm more, comes to 3.000000000000007 mm too much.
test.each([
  ['3 mm', 'within'],
  ['6 mm', 'near'],
])('a button line laid off %s too far or too near is %s on every figure', (amount, status) => {
  const exercise = loadExercise('overlap-double');
  const found = sampled.slice(0, 20).flatMap((figure) =>
    ['+', '-'].map((sign) => {
      const steps = exercise.reference.map((step) =>
        step.name === 'button-line' ? { ...step, distance: `button-to-edge ${sign} ${amount}` } : step,
      );
      const { checks } = gradeDraft(exercise, orderOn(exercise, figure), steps, 'workroom');
      return checks.find(({ target, check }) => target === 'button-line' && check === 'parallel')?.status;
    }),
  );
  expect(new Set(found)).toEqual(new Set([status]));
});
