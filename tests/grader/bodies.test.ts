import { describe, expect, test } from 'vitest';
import { faultsOn, unnamedOn } from './proof.ts';
import { bodiesAtHand, exercises, measuredBodies } from './tables.ts';

describe.each(exercises.map((exercise) => [exercise.id, exercise] as const))('%s', (_, exercise) => {
  test.skipIf(!bodiesAtHand)(
    'reference and misreadings hold on all measured bodies (Gordon et al. 2014; skipped where the data set is not at hand)',
    () => {
      const bodies = measuredBodies();
      expect(bodies).toHaveLength(6068);
      const faults = new Set<string>();
      for (const figure of bodies) {
        for (const fault of faultsOn(exercise, figure, exercise.house)) faults.add(fault);
        // The learner's strictness has the widest tolerances, in which a misreading is hardest to tell from the right answer.
        for (const fault of unnamedOn(exercise, figure, exercise.house, ['learner'])) faults.add(fault);
      }
      expect([...faults]).toEqual([]);
    },
    // Half a minute for a whole collar on an idle core; more where the cores are busy.
    600_000,
  );
});
