import { expect, test } from 'vitest';
import { loadExercise } from '../../../src/cli/exercises.ts';
import type { Sound } from '../../../src/desk/marking/intake/taken.ts';
import { theClass } from '../../../src/desk/marking/the-class.ts';
import { piecesOf } from './class-pieces.ts';

const roll = loadExercise('roll-line');

test('a class on the desk knows what counts, what came earlier, and who is who', async () => {
  const [before] = await piecesOf(roll, { Bo: roll.reference.slice(0, 2) });
  const [later, other] = await piecesOf(roll, { bo: roll.reference, Ana: roll.reference });
  if (!before || !later || !other) throw new Error('Not all of it was taken in.');
  const { counted, others, pieceOf, whoIs } = theClass([before, later, other]);
  expect(counted).toEqual([later, other]);
  expect(others).toEqual([before]);
  expect(pieceOf('bo', 'roll-line')).toBe(later);
  // Where the best counts, what the teacher gave makes one the best.
  const earned = (one: Sound) => (one === before ? 99 : one.entry.marks);
  expect(theClass([before, later, other], { counts: 'best', earned }).pieceOf('bo', 'roll-line')).toBe(before);
  expect(pieceOf('bo', 'swing')).toBeUndefined();
  expect(whoIs('ana')).toEqual({ student: 'Ana', number: '' });
  expect(whoIs('nobody')).toEqual({ student: 'nobody', number: '' });
});
