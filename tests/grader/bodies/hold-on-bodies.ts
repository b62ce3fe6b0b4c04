import { describe, expect, test } from 'vitest';
import type { Exercise } from '../../../src/grader/exercise.ts';
import { faultsOn, unnamedOn } from '../proof.ts';
import { bodiesAtHand, exercises, measuredBodies } from '../tables.ts';
import { spreadOf } from './spread.ts';

/** Lessons whose exercises take long on all bodies, and have a file each, so that the cores share them. */
export const LONG_LESSONS: readonly string[] = ['outer-edge', 'from-draft-to-pattern'];

/**
 * BODIES=all tries each misreading on every body, too, which takes some minutes. Measured so for nine exercises with 112 misreadings, the
 * nearest that one comes to right among the bodies that stand for all is at most 1.05 times as far as among all, for most the same; the
 * nearest of all is 1.35 times what a learner is allowed.
 */
const EVERY = process.env['BODIES'] === 'all';

/** Holds the exercises of some lessons to every measured body, and their misreadings to bodies that stand for all. */
export function holdOnBodies(isMeant: (lesson: string) => boolean): void {
  const meant = exercises.filter(({ lesson }) => isMeant(lesson));
  describe.each(meant.map((exercise) => [exercise.id, exercise] as const))('%s', (_, exercise) => {
    test.skipIf(!bodiesAtHand)(
      'reference holds on all measured bodies, and misreadings on those that stand for all (Gordon et al. 2014; skipped where the data set is not at hand)',
      () => expect(faultsOnBodies(exercise)).toEqual([]),
      // Half a minute for the longest on an idle core with every body tried; more where the cores are busy.
      600_000,
    );
  });
}

function faultsOnBodies(exercise: Exercise): readonly string[] {
  const bodies = measuredBodies();
  expect(bodies).toHaveLength(6068);
  const standing = EVERY ? bodies : spreadOf(bodies);
  expect(standing.length).toBeGreaterThan(300);
  const faults = [
    ...bodies.flatMap((figure) => faultsOn(exercise, figure, exercise.house)),
    // The learner's strictness has the widest tolerances, in which a misreading is hardest to tell from the right answer.
    ...standing.flatMap((figure) => unnamedOn(exercise, figure, exercise.house, ['learner'])),
  ];
  return [...new Set(faults)];
}
