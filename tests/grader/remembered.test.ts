import { expect, test } from 'vitest';
import { loadExercise } from '../../src/cli/exercises.ts';
import { renameObject } from '../../src/drafting/rename.ts';
import type { Step } from '../../src/drafting/step.ts';
import { sampleFigure } from '../../src/garment/sample.ts';
import { gradeDraft } from '../../src/grader/grade.ts';
import { misread } from '../../src/grader/misreading.ts';
import { orderOn } from './tables.ts';

const exercise = loadExercise('roll-line');

/** The same exercise on which nothing was ever marked. */
const untouched = () => structuredClone(exercise);

const renamed = (steps: readonly Step[], by: string): readonly Step[] =>
  steps.reduce((all, { name }) => renameObject(all, name, `${name}-${by}`), steps);

/** The draft with one step's amount typed as a number: where it is right on its own figure, it lets go on others. */
const typed = (steps: readonly Step[], name: string, distance: string): readonly Step[] =>
  steps.map((step) => (step.name === name ? ({ ...step, distance } as Step) : step));

const { reference, misreadings } = exercise;
const drafts = [
  reference,
  ...misreadings.map((misreading) => misread(reference, misreading)),
  typed(reference, 'overlap-edge', '1 in'),
  typed(reference, 'overlap-edge', '27 mm'),
  typed(reference, 'stand-point', '1 1/4 in'),
  reference.slice(0, -1),
  reference.map(({ answers: _, ...step }) => step as Step),
];

test('what was found out about drafts before changes nothing about the next, whatever it calls its things', () => {
  for (const [at, steps] of [...drafts, ...drafts].entries()) {
    const order = orderOn(exercise, sampleFigure(`remembered/${at}`, 'anyone'));
    for (const strictness of ['workroom', 'learner'] as const)
      for (const draft of [steps, renamed(steps, String(at))])
        expect(gradeDraft(exercise, order, draft, strictness)).toEqual(
          gradeDraft(untouched(), order, draft, strictness),
        );
  }
});

test('a draft that calls a typed length as a measure is called is not taken for one that calls it otherwise', () => {
  const order = orderOn(exercise, sampleFigure('remembered/given', 'anyone'));
  const drawn = (called: string): readonly Step[] => [
    { verb: 'tape', name: called, length: '1 1/4 in' },
    ...typed(reference, 'stand-point', called),
  ];
  // The length follows no figure; the measure of that name, which is used where the step is refused, does.
  expect(gradeDraft(exercise, order, drawn('length-1'), 'workroom').otherFigures.held).toBe(0);
  const clashing = gradeDraft(exercise, order, drawn('stand'), 'workroom');
  expect(clashing.otherFigures.held).toBe(6);
  expect(clashing).toEqual(gradeDraft(untouched(), order, drawn('stand'), 'workroom'));
});
