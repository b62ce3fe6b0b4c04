import { describe, expect, test } from 'vitest';
import type { Exercise } from '../../../src/grader/exercise.ts';
import { faultsOn, unnamedOn } from '../proof.ts';
import { bodiesAtHand, exercises, measuredBodies } from '../tables.ts';

/** Lessons whose exercises take long on all bodies, and have a file each, so that the cores share them. */
export const LONG_LESSONS: readonly string[] = ['outer-edge', 'from-draft-to-pattern'];

/** Holds the exercises of some lessons to every measured body. */
export function holdOnBodies(isMeant: (lesson: string) => boolean): void {
  const meant = exercises.filter(({ lesson }) => isMeant(lesson));
  describe.each(meant.map((exercise) => [exercise.id, exercise] as const))('%s', (_, exercise) => {
    test.skipIf(!bodiesAtHand)(
      'reference and misreadings hold on all measured bodies (Gordon et al. 2014; skipped where the data set is not at hand)',
      () => expect(faultsOnBodies(exercise)).toEqual([]),
      // Half a minute for the longest on an idle core; more where the cores are busy.
      600_000,
    );
  });
}

function faultsOnBodies(exercise: Exercise): readonly string[] {
  const bodies = measuredBodies();
  expect(bodies).toHaveLength(6068);
  const faults = bodies.flatMap((figure) => [
    ...faultsOn(exercise, figure, exercise.house),
    // The learner's strictness has the widest tolerances, in which a misreading is hardest to tell from the right answer.
    ...unnamedOn(exercise, figure, exercise.house, ['learner']),
  ]);
  return [...new Set(faults)];
}
