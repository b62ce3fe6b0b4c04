import { expect, test } from 'vitest';
import { gradeDraft } from '../../src/grader/grade.ts';
import { misread } from '../../src/grader/misreading.ts';
import { appliedSteps } from './applied-steps.ts';
import { exercises, invented, orderOn } from './tables.ts';

const misreadings = exercises.flatMap((exercise) =>
  exercise.misreadings.map((misreading) => [exercise.id, misreading.id, exercise, misreading] as const),
);

test.each(misreadings)(
  'in %s, %s is named at the checks it fails and at no other',
  (_exercise, _id, exercise, misreading) => {
    const [figure] = invented;
    const order = orderOn(exercise, figure as (typeof invented)[number]);
    const steps = appliedSteps(misread(exercise.reference, misreading), exercise, order);
    const own = gradeDraft(exercise, order, steps, 'workroom').checks.filter(
      ({ target }) => target === misreading.target,
    );
    const named = own.map(({ status, misreading: found }) => [status === 'within', found]);
    const wanted = own.map(({ status }) => [status === 'within', status === 'within' ? null : misreading.id]);
    expect(named).toEqual(wanted);
  },
);
