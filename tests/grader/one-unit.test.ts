import { describe, expect, test } from 'vitest';
import { loneLength } from '../../src/grader/authoring/one-unit.ts';
import { faultsAfter } from './authored.ts';

describe('a length that a reader of the other unit would have to reckon', () => {
  test.each([
    ['Lay the edge 3 cm beyond the centre front.', '3 cm', '3 cm (1 3/16 in)'],
    ['The edge lies 1 1/4 in beyond it.', '1 1/4 in', '1 1/4 in (3.2 cm)'],
    ['Take off 6 mm, and true it.', '6 mm', '0.6 cm (1/4 in)'],
    ['A 3-inch strip.', '3-inch', '3 in (7.6 cm)'],
    ['Go 1 in (2.5 cm) up. Then go 2 in to the left.', '2 in', '2 in (5.1 cm)'],
    ['Mark the edge (6 mm) away.', '6 mm', '0.6 cm (1/4 in)'],
    ['It is 4 in (as on the order) at least.', '4 in', '4 in (10.2 cm)'],
    ['Go 1 in (2.5 cm) up and 3 cm left.', '3 cm', '3 cm (1 3/16 in)'],
  ])('is found in %j', (text, found, both) => {
    expect(loneLength(text)).toEqual({ found, both });
  });

  test.each([
    'It goes 3 to 4 in (7.5 to 10 cm) past the shoulder tip, and 1 to 1 1/2 in (2.5 to 4 cm) above the neck point.',
    'Line parallel to the centre front, 3 in (or 7.5 cm) left.',
    'The two look well when they are alike: 2\nin beside 1 3/4 in (5 beside 4.5 cm), for instance.',
    'A half-inch (1.3 cm) button, an eighth of an inch (3 mm) in.',
    'Write stand + 1/8 in + cloth-turn; where the house gives it plainly, stand - 1/4 in.',
    'Take 3 cm or 1 3/16 in.',
    'It lies {measured} off: go back to step 3 in the working, at 22.5 degrees.',
    'Fill the blanks of line 2: in goes the name.',
  ])('is none of %j', (text) => {
    expect(loneLength(text)).toBeNull();
  });
});

test('an exercise with such a length in its brief is refused', () => {
  const change = (exercise: { brief: string }) => {
    exercise.brief += ' The edge lies 3 cm beyond the centre front.';
  };
  expect(faultsAfter('overlap', change)).toBe(
    'brief: “3 cm” stands here in one unit, and some readers work in the other. Write both, 3 cm (1 3/16 in); or, where the order states this length, its name in braces.',
  );
});
