import fc from 'fast-check';
import { expect, test } from 'vitest';
import { millimetres, radians } from '../../src/drafting/quantity.ts';
import { styleMeasures } from '../../src/garment/style-measures.ts';
import { variedStyle } from '../../src/garment/style-varied.ts';

/** A style with every measure somewhere in its usual range. */
const usualStyle = fc
  .tuple(...styleMeasures.map(({ usual: [least, most] }) => fc.double({ min: least, max: most, noNaN: true })))
  .map((lengths) => new Map(styleMeasures.map(({ name }, i) => [name, millimetres(Math.round(lengths[i] ?? 0))])));

test('the same seed gives the same order, pinned', () => {
  const base = new Map([
    ['overlap', millimetres(30)],
    ['break-rise', millimetres(38)],
    ['stand', millimetres(30)],
    ['fall', millimetres(42)],
  ]);
  const lengths = [...variedStyle('first', base)].map(([name, quantity]) => `${name} ${quantity.value}`);
  expect(lengths).toMatchInlineSnapshot(`
    [
      "overlap 38",
      "break-rise 48",
      "stand 38",
      "fall 53",
    ]
  `);
});

test('every measure changes by more than a learner’s tolerance, and stays one the reader accepts', () => {
  fc.assert(
    fc.property(fc.integer(), usualStyle, (seed, base) => {
      const varied = variedStyle(seed, base);
      for (const { name, least, most } of styleMeasures) {
        const [before, after] = [base.get(name)?.value ?? Number.NaN, varied.get(name)?.value ?? Number.NaN];
        expect(after).toBeGreaterThanOrEqual(least);
        expect(after).toBeLessThanOrEqual(most);
        // A quarter of the length, to the nearest millimetre: 6 mm from an inch on.
        expect(Math.abs(after - before), name).toBeGreaterThanOrEqual(before / 4 - 0.5);
      }
    }),
    { numRuns: 500 },
  );
});

test('a fall above the stand stays above it', () => {
  fc.assert(
    fc.property(
      fc.integer(),
      fc.integer({ min: 25, max: 44 }),
      fc.integer({ min: 4, max: 20 }),
      (seed, stand, more) => {
        const base = new Map([
          ['stand', millimetres(stand)],
          ['fall', millimetres(stand + more)],
        ]);
        const varied = variedStyle(seed, base);
        expect(varied.get('fall')?.value ?? 0).toBeGreaterThan(varied.get('stand')?.value ?? 0);
      },
    ),
  );
});

test('a range is kept to', () => {
  fc.assert(
    fc.property(fc.integer(), (seed) => {
      const range = { least: 28, most: 33 };
      const after = variedStyle(seed, new Map([['overlap', millimetres(30)]]), { overlap: range }).get(
        'overlap',
      )?.value;
      expect(after).toBeGreaterThanOrEqual(28);
      expect(after).toBeLessThanOrEqual(33);
    }),
  );
});

test('angles stay, and a measure of the exercise’s own varies too', () => {
  const varied = variedStyle(
    1,
    new Map([
      ['tilt', radians(0.2)],
      ['top-button', millimetres(100)],
    ]),
  );
  expect(varied.get('tilt')).toEqual(radians(0.2));
  expect(Math.abs((varied.get('top-button')?.value ?? 100) - 100)).toBeGreaterThanOrEqual(25);
});
