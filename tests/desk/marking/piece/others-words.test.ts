import { expect, test } from 'vitest';
import { loadExercise } from '../../../../src/cli/exercises.ts';
import { othersWords } from '../../../../src/desk/marking/piece/others-words.ts';
import { gradeDraft } from '../../../../src/grader/grade.ts';
import { orderFor } from '../../../../src/grader/order-for.ts';
import { sayFor } from '../../../../src/table/say.ts';

const exercise = loadExercise('overlap');
const say = sayFor({ language: 'en', unit: 'in' });

function wordsOf(distance: string): string | null {
  const steps = [
    { verb: 'parallel', name: 'edge', to: 'centre-front', distance, side: 'left', answers: 'overlap-edge' } as const,
  ];
  return othersWords(gradeDraft(exercise, orderFor(exercise, 'Ilse'), steps, 'workroom'), say);
}

test('a teacher is told what the student is told: whether the draft holds on other figures, and where it lets go', () => {
  expect(wordsOf('overlap')).toContain('6');
  const order = orderFor(exercise, 'Ilse').style.overlap ?? '';
  expect(wordsOf(order)).toContain('typed number');
  // What is wrong on its own figure is tried on no other.
  expect(wordsOf('5 mm')).toBeNull();
});
