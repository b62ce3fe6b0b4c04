import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { sampleFigure } from '../../src/garment/sample.ts';
import { isRange } from '../../src/grader/bounds.ts';
import { type Strictness, strictnessFactor } from '../../src/grader/tolerance.ts';
import { beyondRange, nudge } from './nudge.ts';
import { rightSubject, standingOf, withAnswer } from './standing.ts';
import { exercises, orderOn, referenceSheet, tableFor } from './tables.ts';

const strictnesses = Object.keys(strictnessFactor) as Strictness[];

const everyCheck = exercises.flatMap((exercise) =>
  exercise.checks.map((check) => [exercise.id, check.target, check.measure, exercise, check] as const),
);

const shares = [
  [0.99, 'within'],
  [1.01, 'near'],
  [1.99, 'near'],
  [2.01, 'beyond'],
] as const;

describe('a right answer moved by a share of the tolerance', () => {
  test.each(everyCheck)('%s: %s %s passes at 0.99, earns half from 1.01 to 1.99, and nothing at 2.01', (...row) => {
    const [, , , exercise, check] = row;
    fc.assert(
      fc.property(
        fc.integer({ min: 0, max: 9999 }),
        fc.constantFrom(...strictnesses),
        fc.constantFrom(1 as const, -1 as const),
        fc.double({ min: 0, max: 2 * Math.PI, noNaN: true }),
        (seed, strictness, sense, angle) => {
          const givens = tableFor(exercise, orderOn(exercise, sampleFigure(seed, 'anyone')));
          const own = standingOf(exercise, givens, referenceSheet(exercise, givens), check, strictness);
          const subject = rightSubject(exercise, givens, check);
          for (const [share, status] of shares) {
            const amount = share * own.tolerance;
            const way = isRange(own.bounds) ? beyondRange(own, amount) : { amount, sense };
            const answer = nudge(check, subject, { ...way, angle });
            const student = withAnswer(exercise, givens, check.target, answer);
            const moved = standingOf(exercise, givens, student, check, strictness);
            expect(moved.status, `${share} of ${own.tolerance}`).toBe(status);
          }
        },
      ),
      { numRuns: 30 },
    );
  });
});
