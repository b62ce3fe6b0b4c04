import { describe, expect, test } from 'vitest';
import { loadExercise } from '../../src/cli/exercises.ts';
import { DRAFT_WORK } from '../../src/drafting/limits.ts';
import { replay } from '../../src/drafting/replay.ts';
import { gradeDraft } from '../../src/grader/grade.ts';
import { layOut } from '../../src/grader/lay-out.ts';
import { orderFor } from '../../src/grader/order-for.ts';
import { greedySteps } from '../drafting/greedy.ts';
import { exercises } from './tables.ts';

const overlap = loadExercise('overlap');

describe('a draft that asks for more work than it may', () => {
  const grade = gradeDraft(overlap, orderFor(overlap, 1), [...greedySteps, ...overlap.reference], 'workroom');

  test('is marked for what stands, and not tried on other figures', () => {
    expect(grade.marks).toBe(grade.of);
    expect(grade.problems.length).toBeGreaterThan(0);
    expect(grade.otherFigures).toEqual({ tried: 0, held: 0, letGo: [] });
  });
});

describe.each(exercises.map((exercise) => [exercise.id, exercise] as const))('the reference of %s', (_id, exercise) => {
  test('costs less than a hundredth of what a draft may', () => {
    const dealt = layOut(exercise, orderFor(exercise, 1));
    if (!dealt.ok) throw new Error('not dealt');
    expect(replay(dealt.givens, exercise.reference).work).toBeLessThan(DRAFT_WORK / 100);
  });
});
