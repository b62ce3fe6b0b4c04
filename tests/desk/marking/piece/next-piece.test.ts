import { expect, test } from 'vitest';
import type { Sound } from '../../../../src/desk/marking/intake/taken.ts';
import { nextPiece } from '../../../../src/desk/marking/piece/next-piece.ts';

const lines = ['ana', 'bo', 'cem'].map((key) => ({ key }));

/** A piece of work, as far as it is looked at. */
function piece(student: string): Sound {
  return { kept: { student, exercise: 'roll-line' } } as Sound;
}

const handedIn = (...students: readonly string[]) => ({
  pieceOf: (student: string, exercise: string) =>
    students.includes(student) && exercise === 'roll-line' ? piece(student) : undefined,
});

test('the next piece is the next student’s of the same exercise', () => {
  expect(nextPiece(lines, handedIn('ana', 'bo', 'cem'), piece('ana'))?.kept.student).toBe('bo');
});

test('students who did not do the exercise are passed over', () => {
  expect(nextPiece(lines, handedIn('ana', 'cem'), piece('ana'))?.kept.student).toBe('cem');
});

test('after the last there is none, and none after one who is not in the gradebook', () => {
  expect(nextPiece(lines, handedIn('ana', 'bo', 'cem'), piece('cem'))).toBeUndefined();
  expect(nextPiece(lines, handedIn('ana'), piece('dai'))).toBeUndefined();
});
