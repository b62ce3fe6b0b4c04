import { expect, test } from 'vitest';
import { loadExercise } from '../../src/cli/exercises.ts';
import { afterExercise } from '../../src/course/after-exercise.ts';

const [overlap, button, roll] = [loadExercise('overlap'), loadExercise('overlap-button'), loadExercise('roll-line')];
const lessons = [
  { id: 'overlap', title: 'Overlap', exercises: [overlap, button] },
  { id: 'roll', title: 'Roll line', exercises: [roll] },
];

test('after an exercise comes the next of its lesson, after the last of them the next lesson, and after the last lesson nothing', () => {
  expect(afterExercise(lessons, overlap)).toMatchObject({
    href: '../overlap-button/',
    says: { values: { title: button.title } },
  });
  expect(afterExercise(lessons, button)).toMatchObject({
    href: '../../lessons/roll/',
    says: { values: { title: 'Roll line' } },
  });
  expect(afterExercise(lessons, roll)).toBeNull();
});

test('after an exercise that stands under no lesson comes nothing', () => {
  expect(afterExercise(lessons.slice(1), overlap)).toBeNull();
});
