import { expect, test } from 'vitest';
import { loadExercise } from '../../src/cli/exercises.ts';
import type { Step } from '../../src/drafting/step.ts';
import { gradeDraft } from '../../src/grader/grade.ts';
import { orderFor } from '../../src/grader/order-for.ts';
import { say } from '../../src/words/say.ts';

const rollLine = loadExercise('roll-line');
const order = orderFor(rollLine, 'claims');
const reader = { language: 'en', unit: 'cm' } as const;

function graded(steps: readonly Step[]) {
  const { reports, problems, checks } = gradeDraft(rollLine, order, steps, 'workroom');
  const about = (target: string) =>
    reports.find((one) => one.target === target)?.sentences.map((sentence) => say(sentence, reader));
  return { about, checks, problems: problems.map((problem) => say(problem, reader)) };
}

test('a target whose step lost what it was made from is not made, and the step to mend is named', () => {
  const { about, checks } = graded(rollLine.reference.filter(({ name }) => name !== 'overlap-edge'));
  expect(about('overlap-edge')?.[0]).toBe('Nothing on the sheet is pointed out as the overlap edge yet.');
  expect(about('break-point')).toEqual([
    'Your break point (step 2) could not be drawn. Nothing on the sheet is called “overlap-edge”. Choose something that is there. Mend step 2 first.',
  ]);
  expect(about('roll-line')).toEqual([
    'Your roll line (step 4) could not be drawn. Break point is not there because step 2 could not be carried out. Mend step 2 first.',
  ]);
  expect(checks.find(({ target }) => target === 'break-point')).toMatchObject({ status: 'missing', marks: 0 });
});

test('two steps that answer one target are told, and the later counts', () => {
  const again: Step = {
    verb: 'parallel',
    name: 'again',
    to: 'centre-front',
    distance: 'overlap',
    side: 'left',
    answers: 'overlap-edge',
  };
  const { problems } = graded([...rollLine.reference, again]);
  expect(problems).toEqual([
    'Steps 1 and 7 answer the same target, the overlap edge; the later one, step 7, counts. Take the answer off the others.',
  ]);
});

test('an answer to a target there is none of is told, with the one that was meant', () => {
  const steps = rollLine.reference.map((step) =>
    step.answers === 'break-point' ? { ...step, answers: 'brake-point' } : step,
  );
  expect(graded(steps).problems).toEqual([
    'Step 3: No target of this exercise is called “brake-point”. Did you mean “break-point”?',
  ]);
});

test('what is wrong with a step begins with a capital behind its number, though it begin with a name', () => {
  const beside = { verb: 'cross', name: 'nowhere', one: 'waist', other: 'collarbone-level' } as const;
  expect(graded([beside]).problems).toEqual([
    'Step 1: Waist and collarbone level run parallel, so they do not cross. Choose lines that lean toward each other.',
  ]);
});
