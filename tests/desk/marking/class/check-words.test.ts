import { expect, test } from 'vitest';
import { exerciseNames, loadExercise } from '../../../../src/cli/exercises.ts';
import { checkNames } from '../../../../src/desk/marking/class/check-words.ts';
import type { Exercise } from '../../../../src/grader/exercise.ts';
import { say } from '../../../../src/words/say.ts';

const reader = { language: 'en', unit: 'cm' } as const;

const reportsOf = ({ checks }: Exercise) => checks.map(({ target, measure }) => ({ target, check: measure }));

test.each(exerciseNames())('no two checks of %s are called the same on the class page', (id) => {
  const exercise = loadExercise(id);
  const names = checkNames(exercise, reportsOf(exercise)).map(
    ({ words, nth }, place) => `${exercise.checks[place]?.target}: ${say(words, reader)}/${nth ?? ''}`,
  );
  expect(names.filter((name, place) => names.indexOf(name) !== place)).toEqual([]);
  // What they are told apart by is words, and no number.
  expect(names.filter((name) => !name.endsWith('/'))).toEqual([]);
});

test('two distances of one mark are told apart by what they are measured from', () => {
  const exercise = loadExercise('collar-single');
  const names = checkNames(exercise, reportsOf(exercise));
  const notch = names.filter((_, place) => exercise.checks[place]?.target === 'notch');
  expect(notch.map(({ words }) => say(words, reader))).toEqual([
    'distance from the roll line',
    'distance from the notch level as folded over',
  ]);
});

test('without the exercise, or with another one, checks have their measure, and a number where that is the same', () => {
  const twice = [
    { target: 'notch', check: 'distance' },
    { target: 'notch', check: 'distance' },
    { target: 'notch', check: 'level' },
  ] as const;
  const said = (exercise?: Exercise) =>
    checkNames(exercise, twice).map(({ words, nth }) => [say(words, reader), nth] as const);
  const plainly = [
    ['distance', 1],
    ['distance', 2],
    ['height', null],
  ];
  expect(said()).toEqual(plainly);
  expect(said(loadExercise('roll-line'))).toEqual(plainly);
});
