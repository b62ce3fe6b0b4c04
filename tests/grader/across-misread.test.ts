import { expect, test } from 'vitest';
import { loadExercise } from '../../src/cli/exercises.ts';
import type { Step } from '../../src/drafting/step.ts';
import { people } from '../../src/garment/people.ts';
import { gradeDraft } from '../../src/grader/grade.ts';
import { say } from '../../src/words/say.ts';
import { orderOn } from './tables.ts';

test('a line that lands on a misreading and yet cannot be read, since it runs across the right one, is told in words that can be said', () => {
  const exercise = loadExercise('roll-line-pair');
  const [person] = people;
  if (person === undefined) throw new Error('no people');
  // The stand point goes for the high break point, and the break point lies on the centre front: the right line is then level.
  const steps = exercise.reference.map((step): Step => {
    if (step.name === 'break-point') return { ...step, one: 'centre-front' } as Step;
    if (step.name === 'stand-point') return { ...step, toward: 'right', answers: 'break-point-high' } as Step;
    const { answers: _, ...unanswering } = step;
    return step.name === 'break-point-high' ? (unanswering as Step) : step;
  });
  const { checks, reports } = gradeDraft(exercise, orderOn(exercise, person.figure), steps, 'workroom');
  const unread = checks.find(({ target }) => target === 'roll-line-high');
  expect(unread).toMatchObject({ status: 'beyond', off: null, misreading: null });
  const said = reports.flatMap(({ target, sentences }) =>
    sentences.map((one) => `${target}: ${say(one, { language: 'en', unit: 'cm' })}`),
  );
  expect(said.find((one) => one.startsWith('roll-line-high:'))).toMatchInlineSnapshot(
    `"roll-line-high: Your high roll line runs across the right one, at 89.1° to it."`,
  );
});
