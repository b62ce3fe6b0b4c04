import { expect, test } from 'vitest';
import { loadExercise } from '../../src/cli/exercises.ts';
import type { PointShape } from '../../src/drafting/shape.ts';
import type { Step } from '../../src/drafting/step.ts';
import { gradeDraft } from '../../src/grader/grade.ts';
import { say } from '../../src/words/say.ts';
import { invented, orderOn, referenceSheet, tableFor } from './tables.ts';

// A third of the way is laid off by the reference itself: it is no slip, though it is a number and comes first.
test('a draft lets go at a mark made by eye, and not at a number before it that the reference has too', () => {
  const exercise = loadExercise('shawl');
  const order = orderOn(exercise, invented[0] as (typeof invented)[number]);
  const sheet = referenceSheet(exercise, tableFor(exercise, order));
  const { point } = sheet.shapes.get('lapel-worn') as PointShape;
  const mark: Step = { verb: 'pencil', name: 'by-eye', at: [point.x, point.y] };
  const reach: Step = { verb: 'parallel', name: 'lapel-reach', to: 'roll-line', through: 'by-eye' };
  const steps = exercise.reference.flatMap((step) => {
    if (step.name === 'lapel-reach') return [];
    return step.name === 'lapel-worn' ? [mark, reach, step] : [step];
  });
  const { marks, of, otherFigures } = gradeDraft(exercise, order, steps, 'workroom');
  expect(marks).toBe(of);
  const found = otherFigures.letGo.find(({ target }) => target === 'lapel-point');
  expect(found?.name).toBe('by-eye');
  expect(found && say(found.message, { language: 'en', unit: 'cm' })).toContain('is a mark made by eye');
});
