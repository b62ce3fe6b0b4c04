import { describe, expect, test } from 'vitest';
import { loadExercise } from '../../src/cli/exercises.ts';
import type { Name, Step } from '../../src/drafting/step.ts';
import type { Exercise } from '../../src/grader/exercise.ts';
import { misread } from '../../src/grader/misreading.ts';
import { appliedSteps } from './applied-steps.ts';
import { costsOf, judgedOn, rightDraft } from './one-slip.ts';
import { exercises, invented, orderOn } from './tables.ts';

const figure = invented[0] ?? never();

/** The share of a target's marks that a draft loses; nothing where it is right. */
function shareLost(exercise: Exercise, target: Name, steps: readonly Step[]): number {
  const judged = judgedOn(exercise, figure, steps) ?? never();
  const cost = costsOf(judged).find((one) => one.target === target);
  return cost === undefined ? 0 : cost.lost / cost.of;
}

describe('an outer edge too full or too hollow over the shoulder', () => {
  // By the step that lays off the collar’s width there.
  test.each([
    ['collar-single', 'over-shoulder'],
    ['collar-double', 'over-shoulder'],
    ['shawl', 'over-shoulder'],
    ['collar-outline', 'over-neck'],
  ])('by 15 mm is clearly marked down in %s', (id, name) => {
    const exercise = loadExercise(id);
    for (const by of ['+ 15 mm', '- 15 mm']) {
      const steps = rightDraft(exercise, figure).map((step) =>
        step.name === name && 'distance' in step ? ({ ...step, distance: `${step.distance} ${by}` } as Step) : step,
      );
      expect(shareLost(exercise, 'outer-edge', steps), by).toBeGreaterThan(1 / 6);
    }
  });
});

describe('a classic wrong way', () => {
  const all = exercises.flatMap((exercise) =>
    exercise.misreadings.map((one) => [exercise.id, one.id, exercise, one] as const),
  );

  test.each(all)(
    'costs a tenth of the marks of its target at the least: %s, %s',
    (_id, _name, exercise, misreading) => {
      const steps = appliedSteps(misread(exercise.reference, misreading), exercise, orderOn(exercise, figure));
      // What cannot be drawn on from earns nothing after it; it is looked at elsewhere.
      if (judgedOn(exercise, figure, steps) === null) return;
      expect(shareLost(exercise, misreading.target, steps)).toBeGreaterThanOrEqual(1 / 10);
    },
  );
});

describe('a swing by another ease', () => {
  const exercise = loadExercise('swing');
  const swung = (by: string) =>
    rightDraft(exercise, figure).map((step) => ('by' in step ? ({ ...step, by } as Step) : step));

  test('is charged once, by its angle', () => {
    const costs = costsOf(judgedOn(exercise, figure, swung('edge-ease + 10 mm')) ?? never());
    expect(costs).toEqual([{ target: 'back-line', lost: 3, of: 5 }]);
  });

  test('and its pin by another look, at the pin', () => {
    const steps = rightDraft(exercise, figure).map((step) =>
      step.name === 'back-line' ? ({ ...step, about: 'back-neck-point' } as Step) : step,
    );
    const costs = costsOf(judgedOn(exercise, figure, steps) ?? never());
    expect(costs).toEqual([{ target: 'back-line', lost: 2, of: 5 }]);
  });
});

function never(): never {
  throw new Error('not there');
}
