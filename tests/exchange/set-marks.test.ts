import { expect, test } from 'vitest';
import { loadExercise } from '../../src/cli/exercises.ts';
import { SET_MARKS } from '../../src/exchange/set.ts';
import { scaledMarks, usualMarks } from '../../src/exchange/set-marks.ts';

test('marks are brought to what the set says, not rounded, and nothing earned of nothing is nothing', () => {
  expect(scaledMarks({ marks: 5, of: 15 }, 10)).toBeCloseTo(10 / 3, 14);
  expect(scaledMarks({ marks: 15, of: 15 }, 10)).toBe(10);
  expect(scaledMarks({ marks: 0, of: 0 }, 10)).toBe(0);
});

test('an exercise is usually worth what its checks are, at least one mark and no more than a set allows', () => {
  const { checks } = loadExercise('swing');
  const worth = (marks: readonly number[]): number =>
    usualMarks({ ...loadExercise('swing'), checks: marks.map((one) => ({ ...checks[0], marks: one }) as never) });
  expect(worth([2, 3])).toBe(5);
  expect(worth([])).toBe(1);
  expect(worth([SET_MARKS, 1])).toBe(SET_MARKS);
});
