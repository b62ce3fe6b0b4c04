import fc from 'fast-check';
import { expect, test } from 'vitest';
import { millimetres, radians } from '../../src/drafting/quantity.ts';
import { styleMeasures } from '../../src/garment/style-measures.ts';
import { variedStyle } from '../../src/garment/style-varied.ts';

/** The less roomy side is taken down to two thirds of the other's room. */
const CRAMPED = 2 / 3;

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
      "overlap 22",
      "break-rise 25",
      "stand 20",
      "fall 28",
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
        // 60 % of the two fifths a measure may move, to the nearest millimetre: 6 mm from an inch on. Less where the
        // reader's own range leaves less room.
        const room = Math.max(Math.min(0.4 * before, most - before), Math.min(0.4 * before, before - least));
        expect(Math.abs(after - before), name).toBeGreaterThanOrEqual(0.6 * CRAMPED * room - 0.5);
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

test('a range is kept to, and crossed well away from where the order stands in it', () => {
  const range = { least: 25.4, most: 44.45 };
  fc.assert(
    fc.property(fc.integer(), fc.integer({ min: 26, max: 44 }), (seed, overlap) => {
      const base = new Map([['overlap', millimetres(overlap)]]);
      const after = variedStyle(seed, base, { overlap: range }).get('overlap')?.value ?? Number.NaN;
      expect(after).toBeGreaterThanOrEqual(range.least);
      expect(after).toBeLessThanOrEqual(range.most);
      // Two thirds of the roomier side's half, and 60 % of that: 3.8 mm, less half a millimetre of rounding.
      expect(Math.abs(after - overlap)).toBeGreaterThanOrEqual(3.3 - 0.5);
    }),
  );
});

test('a range of one value, or of none in whole millimetres, is left alone', () => {
  const base = new Map([['overlap', millimetres(30)]]);
  expect(variedStyle(1, base, { overlap: { least: 30, most: 30 } })).toEqual(base);
  expect(variedStyle(1, base, { overlap: { least: 30.2, most: 30.4 } })).toEqual(base);
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
  expect(Math.abs((varied.get('top-button')?.value ?? 100) - 100)).toBeGreaterThanOrEqual(24);
});
