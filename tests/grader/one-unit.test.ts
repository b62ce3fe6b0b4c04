import { describe, expect, test } from 'vitest';
import { loneLength } from '../../src/grader/authoring/one-unit.ts';
import { inReadersUnit } from '../../src/words/literal-lengths.ts';
import { faultsAfter } from './authored.ts';
import { exercises } from './tables.ts';

describe('a length that a reader of the other unit would have to reckon', () => {
  test.each([
    ['Lay the edge 3 cm beyond the centre front.', '3 cm', '{3 cm}'],
    ['The edge lies 1 1/4 in beyond it.', '1 1/4 in', '{1 1/4 in}'],
    ['The edge lies 1¼ in beyond it.', '1¼ in', '{1 1/4 in}'],
    ['Take off 6 mm, and true it.', '6 mm', '{6 mm}'],
    ['A 3-inch strip.', '3-inch', '{3 in}'],
    ['Go {1 in} up. Then go 2 in to the left.', '2 in', '{2 in}'],
    ['Go 1 in (2.5 cm) up.', '1 in', '{1 in}'],
    ['A half-inch (1.3 cm) button.', '1.3 cm', '{1.3 cm}'],
  ])('is found in %j', (text, found, braced) => {
    expect(loneLength(text)).toEqual({ found, braced });
  });

  test.each([
    'It goes {3 in} to {4 in} past the shoulder tip, and {1 in} to {1 1/2 in} above the neck point.',
    'Line parallel to the centre front, {7.5 cm} left.',
    'Write stand + 1/8 in + cloth-turn; where the house gives it plainly, stand - 1/4 in.',
    'It lies {measured} off: go back to step 3 in the working, at 22.5 degrees.',
    'Fill the blanks of line 2: in goes the name.',
  ])('is none of %j', (text) => {
    expect(loneLength(text)).toBeNull();
  });

  test('reads in braces what it was, to either reader', () => {
    for (const text of ['3 cm', '1¼ in', '3-inch', '½ in']) {
      const { braced } = loneLength(`Go ${text} up.`) ?? { braced: '' };
      expect([braced, inReadersUnit(braced, 'cm'), inReadersUnit(braced, 'in')]).toEqual([
        braced,
        expect.stringMatching(/^[\d.]+ cm$/),
        expect.stringMatching(/^[\d /]+ in$/),
      ]);
    }
  });
});

test('an exercise with such a length in its brief is refused', () => {
  const change = (exercise: { brief: string }) => {
    exercise.brief += ' The edge lies 3 cm beyond the centre front.';
  };
  expect(faultsAfter('overlap', change)).toBe(
    'brief: “3 cm” stands here in one unit, and some readers work in the other. Write it in braces, {3 cm}, and each reader is told it in their own; or, where the order states this length, its name in braces.',
  );
});

test('every text of every exercise is said in one unit to each reader', () => {
  for (const { id, brief, targets, checks, misreadings } of exercises) {
    const texts = [
      brief,
      ...targets.flatMap(({ hints }) => hints),
      ...checks.flatMap(({ why, mend }) => [why, mend]),
      ...misreadings.map(({ says }) => says),
    ];
    for (const text of texts) {
      expect(inReadersUnit(text, 'cm'), id).not.toMatch(/[\d½¼¾] ?(?:in|inch|inches)(?![a-z ]|\s+(?:the|a|your)\b)/);
      expect(inReadersUnit(text, 'in'), id).not.toMatch(/\d (?:cm|mm)\b/);
    }
  }
});
