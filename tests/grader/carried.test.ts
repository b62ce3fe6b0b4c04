import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sampleFigure } from '../../src/garment/sample.ts';
import { isRange } from '../../src/grader/bounds.ts';
import { judge } from '../../src/grader/judge.ts';
import { beyondRange, nudge } from './nudge.ts';
import { rightSubject, standingOf, withAnswer } from './standing.ts';
import { exercises, orderOn, referenceSheet, tableFor } from './tables.ts';

const earlyTargets = exercises.flatMap((exercise) =>
  exercise.targets.slice(0, -1).flatMap(({ name }) => {
    const check = exercise.checks.find(({ target }) => target === name);
    return check === undefined ? [] : [[exercise.id, name, exercise, check] as const];
  }),
);

describe('an early slip', () => {
  test.each(earlyTargets)('in %s at the %s costs its own marks only', (_id, name, exercise, check) => {
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 9999 }),
        fc.constantFrom(1 as const, -1 as const),
        fc.double({ min: 3, max: 5, noNaN: true }),
        fc.double({ min: 0, max: 2 * Math.PI, noNaN: true }),
        (seed, sense, times, angle) => {
          const givens = tableFor(exercise, orderOn(exercise, sampleFigure(seed, 'anyone')));
          const own = standingOf(exercise, givens, referenceSheet(exercise, givens), check, 'workroom');
          const amount = times * own.tolerance;
          const way = isRange(own.bounds) ? beyondRange(own, amount) : { amount, sense };
          const answer = nudge(check, rightSubject(exercise, givens, check), { ...way, angle });
          const student = withAnswer(exercise, givens, name, answer);
          const lost = judge(exercise, givens, student, 'workroom').filter(({ checks }) =>
            checks.some(({ status }) => status !== 'within'),
          );
          expect(lost.map(({ target }) => target.name)).toEqual([name]);
        },
      ),
      { numRuns: 60 },
    );
  });
});
