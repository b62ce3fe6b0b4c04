import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { loadExercise } from '../../src/cli/exercises.ts';
import { replay } from '../../src/drafting/replay.ts';
import type { Step } from '../../src/drafting/step.ts';
import { sampleFigure } from '../../src/garment/sample.ts';
import { isRange } from '../../src/grader/bounds.ts';
import { gradeDraft } from '../../src/grader/grade.ts';
import { judge } from '../../src/grader/judge.ts';
import { byMarks, byOtherTools, mirrored } from './alternative-collars.ts';
import { beyondRange, nudge } from './nudge.ts';
import { rightSubject, standingOf, withAnswer } from './standing.ts';
import { exercises, invented, orderOn, referenceSheet, tableFor } from './tables.ts';

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

const capstones = [
  ['collar-single', 'single'],
  ['collar-double', 'double'],
  ['shawl', 'shawl'],
] as const;

/** What is swung to open the collar, as the drafts call it. */
const OPENED: readonly unknown[] = ['seam-line', 'seam-m', 'far'];

/** A draft whose collar is swung by a part of what it needs; all that follows is drawn on from there. */
function swungBy(part: number, steps: readonly Step[]): readonly Step[] {
  return steps.map((step) => {
    if (step.verb !== 'swing' || !OPENED.includes(step.what)) return step;
    return 'by' in step ? { ...step, by: `(${step.by}) * ${part}` } : { ...step, angle: `(${step.angle}) * ${part}` };
  });
}

// The swing is no target: it shows in the centre back, and whoever draws on from there draws the rest right.
describe.each(capstones)('in %s a collar swung', (id, kind) => {
  const exercise = loadExercise(id);

  test.each([
    ['not at all', 0],
    ['by half', 0.5],
    ['too far', 1.6],
    ['the wrong way', -1],
  ])('%s loses the marks of the centre back only, whichever way it is drawn', (_, part) => {
    for (const way of [byOtherTools, mirrored, byMarks])
      for (const figure of invented) {
        const givens = tableFor(exercise, orderOn(exercise, figure));
        const student = replay(givens, swungBy(part, way(kind)));
        const lost = judge(exercise, givens, student, 'workroom').filter(({ checks }) =>
          checks.some(({ status }) => status !== 'within'),
        );
        expect(lost.map(({ target }) => target.name)).toEqual(['collar-centre-back']);
      }
  });
});

test('what is wanted beside a line that was laid off wrongly is said to be judged from there, though it only runs further in', () => {
  const exercise = loadExercise('overlap-double');
  const steps = exercise.reference.map(
    (step): Step => (step.name === 'button-line' ? ({ ...step, distance: 'button-to-edge + 1 cm' } as Step) : step),
  );
  const [figure] = invented;
  const { checks } = gradeDraft(exercise, orderOn(exercise, figure as (typeof invented)[number]), steps, 'workroom');
  const later = checks.filter(({ target }) => target === 'second-button-line');
  expect(later.map(({ status, carried }) => [status, carried])).toEqual([
    ['within', true],
    ['within', true],
  ]);
});
