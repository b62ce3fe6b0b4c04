import { expect, test } from 'vitest';
import { loadExercise } from '../../../../src/cli/exercises.ts';
import type { Sound } from '../../../../src/desk/marking/intake/taken.ts';
import { rightShown } from '../../../../src/desk/marking/sheets/paper.ts';
import type { ExerciseWork } from '../../../../src/desk/marking/sheets/student-work.ts';
import { misread } from '../../../../src/grader/misreading.ts';
import { piecesOf } from '../class-pieces.ts';

const roll = loadExercise('roll-line');

const works = (piece: Sound | undefined): ExerciseWork => {
  if (!piece) throw new Error('It was not taken in.');
  return { exercise: 'roll-line', counted: { entry: piece.entry, piece } };
};

test('right drafts are drawn on a sheet where they take no page of their own, and told where they would', async () => {
  const [throughNeck] = roll.misreadings.filter(({ id }) => id === 'through-neck-point');
  if (!throughNeck) throw new Error('The misreading is gone.');
  const [good, bad] = await piecesOf(roll, { Ilse: roll.reference, Bo: misread(roll.reference, throughNeck) });
  const [right, off] = [works(good), works(bad)];
  const nothing: ExerciseWork = { exercise: 'roll-line', counted: null };
  expect(rightShown([])).toBe('drawn');
  expect(rightShown([right, right, right, right])).toBe('drawn');
  // One draft that is off, and a row and a half of right ones.
  expect(rightShown([off, right, right, right])).toBe('drawn');
  expect(rightShown([right, off, right, off])).toBe('told');
  // Where the other page is there anyhow, they are drawn on it.
  expect(rightShown([off, off, off, right])).toBe('drawn');
  expect(rightShown([nothing, nothing, nothing, right])).toBe('drawn');
});
