import { describe, expect, test } from 'vitest';
import { exerciseNames, loadExercise } from '../../src/cli/exercises.ts';
import { renameObject } from '../../src/drafting/rename.ts';
import type { Step } from '../../src/drafting/step.ts';
import { people } from '../../src/garment/people.ts';
import { ofWays } from '../../src/grader/amendments.ts';
import { gradeDraft } from '../../src/grader/grade.ts';
import { misread } from '../../src/grader/misreading.ts';
import { orderOn } from './tables.ts';

/** The reference with each way that a step goes turned to the opposite, one at a time. */
function turned(reference: readonly Step[]): readonly (readonly Step[])[] {
  return reference.flatMap((one, index) => ofWays(one).map(({ step }) => reference.with(index, step)));
}

/** The draft with a name of the learner's own for everything it makes. */
function inOwnNames(steps: readonly Step[]): readonly Step[] {
  return steps.reduce((all, { name }, at) => renameObject(all, name, `mine-${at}`), steps);
}

describe('what was done wrong is found whatever the learner calls things', () => {
  test.each(exerciseNames())('%s', (id) => {
    const exercise = loadExercise(id);
    const { reference, misreadings } = exercise;
    const order = orderOn(exercise, people[0]?.figure ?? never());
    const found = (steps: readonly Step[]) =>
      gradeDraft(exercise, order, steps, 'workroom').checks.map(({ target, check, misreading }) => ({
        target,
        check,
        misreading,
      }));
    for (const steps of [...turned(reference), ...misreadings.map((one) => misread(reference, one))])
      expect(found(inOwnNames(steps))).toEqual(found(steps));
  });
});

function never(): never {
  throw new Error('There is nobody to draft for.');
}
