import { expect, test } from 'vitest';
import { nearestSpelling, spellingDistance } from '../../src/drafting/spelling.ts';

// Values of the optimal string alignment distance as commonly tabled; CA to ABC is the case that tells it from others.
test.each([
  ['', '', 0],
  ['abc', '', 3],
  ['kitten', 'sitting', 3],
  ['ca', 'abc', 3],
  ['waist', 'wiast', 1],
  ['stand', 'stnd', 1],
])('%s and %s are %i slips apart', (a, b, slips) => {
  expect([spellingDistance(a, b), spellingDistance(b, a)]).toEqual([slips, slips]);
});

test('the nearest known word is found, within a slip or two', () => {
  const known = ['stand', 'fall', 'overlap', 'mark-1', 'back-neck'];
  expect(
    ['stnad', 'overlp', 'oevrlpa', 'bck-nec', 'fal', 'fold', 'xx', ''].map((word) => nearestSpelling(word, known)),
  ).toEqual(['stand', 'overlap', 'overlap', 'back-neck', 'fall', null, null, null]);
});

test('a number is not a slip', () => {
  expect(nearestSpelling('mark-2', ['mark-1'])).toBe(null);
  expect(nearestSpelling('mrak-1', ['mark-1', 'mark-2'])).toBe('mark-1');
});
