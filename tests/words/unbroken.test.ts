import { expect, test } from 'vitest';
import { lengthText } from '../../src/words/length.ts';
import { unbroken } from '../../src/words/unbroken.ts';

/** Where a line may end: at a plain space. */
const pieces = (text: string): readonly string[] => unbroken(text).split(' ');

test('no line ends inside a length, whole or in fractions, in either unit', () => {
  expect(pieces(`the stand, ${lengthText(31.75, 'in')}, past`)).toEqual([
    'the',
    'stand,',
    '1\u00a01/4\u00a0in,',
    'past',
  ]);
  expect(pieces(`by ${lengthText(32, 'cm')} or 6 mm`)).toEqual(['by', '3.2\u00a0cm', 'or', '6\u00a0mm']);
  expect(pieces('5/8 in')).toEqual(['5/8\u00a0in']);
});

test('a pair may break between its two halves', () => {
  expect(pieces('1.6 cm (5/8 in)')).toEqual(['1.6\u00a0cm', '(5/8\u00a0in)']);
});

test('other words and numbers are left as they are', () => {
  expect(unbroken('line 1 to mark 2, 3 marks inside')).toBe('line 1 to mark 2, 3 marks inside');
});
