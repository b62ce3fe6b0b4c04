import { describe, expect, test } from 'vitest';
import type { Direction, Step } from '../../src/drafting/step.ts';
import type { Figure } from '../../src/garment/figure.ts';
import type { Exercise } from '../../src/grader/exercise.ts';
import { gradeDraft } from '../../src/grader/grade.ts';
import { say } from '../../src/words/say.ts';
import { appliedSteps } from './applied-steps.ts';
import { exercises, invented, orderOn } from './tables.ts';

const inCentimetres = { language: 'en', unit: 'cm' } as const;

const opposite: Readonly<Record<Direction, Direction>> = { left: 'right', right: 'left', up: 'down', down: 'up' };

/** Steps that answer a target and lay something off in a direction, each with the draft in which it goes the other way. */
const turned = exercises.flatMap((exercise) =>
  exercise.reference.flatMap((step) => {
    const field = step.verb === 'along' ? 'toward' : 'side';
    const way = (step as Step & { readonly toward?: string; readonly side?: string })[field];
    const other = opposite[way as Direction];
    if (step.answers === undefined || other === undefined) return [];
    const steps = exercise.reference.map((one) => (one === step ? ({ ...step, [field]: other } as Step) : one));
    return [[exercise.id, step.answers, exercise, steps] as const];
  }),
);

describe('what is laid off the other way', () => {
  test.each(turned)('in %s is no right %s', (_id, target, exercise, steps) => {
    for (const figure of invented) {
      const order = orderOn(exercise, figure);
      const { checks } = gradeDraft(exercise, order, appliedSteps(steps, exercise, order), 'learner');
      const lost = checks.filter((check) => check.target === target && check.status === 'beyond');
      expect(lost.length, `${exercise.id} ${target}`).toBeGreaterThan(0);
    }
  });
});

test('an edge on the wrong side of where a range begins is told so', () => {
  const exercise = exercises.find(({ id }) => id === 'plan-muslin') as Exercise;
  const [figure] = invented as [Figure];
  const steps = exercise.reference.map((step) =>
    step.name === 'side-cut' ? ({ ...step, distance: '5 in', side: 'left' } as Step) : step,
  );
  const { reports } = gradeDraft(exercise, orderOn(exercise, figure), steps, 'workroom');
  const said = reports.find(({ target }) => target === 'side-cut')?.sentences.map((one) => say(one, inCentimetres));
  expect(said?.[0]).toMatchInlineSnapshot(
    `"Your side cut is 12.7 cm from the upright through the shoulder tip, on the wrong side of it; 7.6 cm on the other side is wanted."`,
  );
});
