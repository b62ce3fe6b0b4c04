import fc from 'fast-check';
import { expect, test } from 'vitest';
import { lengthText } from '../../src/words/length.ts';
import { inReadersUnit } from '../../src/words/literal-lengths.ts';
import { written } from '../../src/words/message.ts';
import { say } from '../../src/words/say.ts';

test('each reader is told a length in braces in the unit of the reader', () => {
  const text = 'It goes {3 in} to {4 in} past the tip, {1 1/4 in} up, and {6 mm} further.';
  expect(inReadersUnit(text, 'cm')).toBe('It goes 7.6 cm to 10.2 cm past the tip, 3.2 cm up, and 0.6 cm further.');
  expect(inReadersUnit(text, 'in')).toBe('It goes 3 in to 4 in past the tip, 1 1/4 in up, and 1/4 in further.');
});

test('what is stated finer than a millimetre is not told coarser to those who read centimetres', () => {
  expect(inReadersUnit('within {1/16 in}, {1/8 in} or {1/4 in}', 'cm')).toBe('within 1.5 mm, 0.3 cm or 0.6 cm');
  expect(inReadersUnit('within {1/16 in}, {1/8 in} or {1/4 in}', 'in')).toBe('within 1/16 in, 1/8 in or 1/4 in');
});

test('what is no length in braces stays as it is: measures, choices and plain words', () => {
  for (const text of ['{stand}', '{3 lines}', '{iron, plural, =0 {3 times} other {1 in turn}}', '{-3 cm}', '3 cm'])
    expect(inReadersUnit(text, 'cm')).toBe(text);
});

test('a length stands inside a choice, and beside a measure', () => {
  const text = '{iron, plural, =0 {by {1/2 in} and} other {by}} {stand}';
  const reader = { language: 'en', unit: 'in' } as const;
  expect(say(written(text, { iron: 0, stand: { mm: 30 } }), reader)).toBe('by 1/2 in and 1 3/16 in');
  expect(say(written(text, { iron: 1, stand: { mm: 30 } }), { ...reader, unit: 'cm' })).toBe('by 3 cm');
});

test('whatever a length reads as, in braces it reads the same', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 40000 }), fc.constantFrom('cm', 'in'), (tenths, unit) => {
      const mm = tenths / 10;
      const own = lengthText(mm, unit);
      fc.pre(own !== '0 in' && own !== '0 cm');
      expect(inReadersUnit(`{${own}}`, unit)).toBe(own);
    }),
  );
});
