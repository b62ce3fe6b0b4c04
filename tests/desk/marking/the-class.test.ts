import { expect, test } from 'vitest';
import { loadExercise } from '../../../src/cli/exercises.ts';
import { theClass } from '../../../src/desk/marking/the-class.ts';
import { piecesOf } from './class-pieces.ts';

const roll = loadExercise('roll-line');

test('a class on the desk knows what counts, what came earlier, and who is who', async () => {
  const [before] = await piecesOf(roll, { Bo: roll.reference.slice(0, 2) });
  const [later, other] = await piecesOf(roll, { bo: roll.reference, Ana: roll.reference });
  if (!before || !later || !other) throw new Error('Not all of it was taken in.');
  const { counted, earlier, pieceOf, whoIs } = theClass([before, later, other]);
  expect(counted).toEqual([later, other]);
  expect(earlier).toEqual([before]);
  expect(pieceOf('bo', 'roll-line')).toBe(later);
  expect(pieceOf('bo', 'swing')).toBeUndefined();
  expect(whoIs('ana')).toEqual({ student: 'Ana', number: '' });
  expect(whoIs('nobody')).toEqual({ student: 'nobody', number: '' });
});
