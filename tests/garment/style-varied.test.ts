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

/** Which of the other customers it is. */
const order = fc.nat({ max: 5 });

test('the same seed gives the same order, pinned', () => {
  const base = new Map([
    ['overlap', millimetres(30)],
    ['break-rise', millimetres(38)],
    ['stand', millimetres(30)],
    ['fall', millimetres(42)],
  ]);
  const lengths = [...variedStyle('first', 0, base)].map(([name, quantity]) => `${name} ${quantity.value}`);
  expect(lengths).toMatchInlineSnapshot(`
    [
      "overlap 42",
      "break-rise 24",
      "stand 41",
      "fall 57",
    ]
  `);
});

test('every measure changes on every order, and stays one the reader accepts', () => {
  fc.assert(
    fc.property(fc.integer(), order, usualStyle, (seed, nth, base) => {
      const varied = variedStyle(seed, nth, base);
      for (const { name, least, most } of styleMeasures) {
        const [before, after] = [base.get(name)?.value ?? Number.NaN, varied.get(name)?.value ?? Number.NaN];
        expect(after).toBeGreaterThanOrEqual(least);
        expect(after).toBeLessThanOrEqual(most);
        // 30 % of the two fifths a measure may move, to the nearest millimetre. Less where the reader's own range leaves
        // less room.
        const room = Math.max(Math.min(0.4 * before, most - before), Math.min(0.4 * before, before - least));
        expect(Math.abs(after - before), name).toBeGreaterThanOrEqual(0.3 * room - 0.5);
      }
    }),
    { numRuns: 500 },
  );
});

test('every measure goes 90 % of the way to an end on three of the six orders, so that a typed number is seen', () => {
  fc.assert(
    fc.property(fc.integer(), usualStyle, (seed, base) => {
      const orders = Array.from({ length: 6 }, (_, nth) => variedStyle(seed, nth, base));
      for (const { name, least, most } of styleMeasures) {
        const before = base.get(name)?.value ?? Number.NaN;
        const room = Math.max(Math.min(0.4 * before, most - before), Math.min(0.4 * before, before - least));
        const far = orders.filter((varied) => {
          const moved = Math.abs((varied.get(name)?.value ?? Number.NaN) - before);
          return moved >= 0.9 * CRAMPED * room - 0.5;
        });
        expect(far.length, name).toBeGreaterThanOrEqual(3);
      }
    }),
    { numRuns: 200 },
  );
});

test('measures of two parts that are alike here part on some other order, each the bigger once', () => {
  const parts = ['overlap', 'break-rise', 'stand', 'gorge-depth', 'notch-width', 'lapel-width', 'collar-end'];
  const range = { least: 25, most: 45 };
  fc.assert(
    fc.property(fc.integer(), fc.integer({ min: 26, max: 44 }), (seed, alike) => {
      const base = new Map(parts.map((name) => [name, millimetres(alike)]));
      const ranges = Object.fromEntries(parts.map((name) => [name, range]));
      const orders = Array.from({ length: 6 }, (_, nth) => variedStyle(seed, nth, base, ranges));
      const over = (one: string, other: string) =>
        Math.max(...orders.map((varied) => (varied.get(one)?.value ?? 0) - (varied.get(other)?.value ?? 0)));
      // The least that can be: 90 % of half the range, less 45 % of it where both go one way, less rounding.
      for (const one of parts)
        for (const other of parts) if (one !== other) expect(over(one, other)).toBeGreaterThan(3.5);
    }),
    { numRuns: 200 },
  );
});

test('a fall above the stand stays above it', () => {
  fc.assert(
    fc.property(
      fc.integer(),
      order,
      fc.integer({ min: 25, max: 44 }),
      fc.integer({ min: 4, max: 20 }),
      (seed, nth, stand, more) => {
        const base = new Map([
          ['stand', millimetres(stand)],
          ['fall', millimetres(stand + more)],
        ]);
        const varied = variedStyle(seed, nth, base);
        expect(varied.get('fall')?.value ?? 0).toBeGreaterThan(varied.get('stand')?.value ?? 0);
      },
    ),
  );
});

test('a range is kept to, and crossed well away from where the order stands in it', () => {
  const range = { least: 25.4, most: 44.45 };
  fc.assert(
    fc.property(fc.integer(), order, fc.integer({ min: 26, max: 44 }), (seed, nth, overlap) => {
      const base = new Map([['overlap', millimetres(overlap)]]);
      const after = variedStyle(seed, nth, base, { overlap: range }).get('overlap')?.value ?? Number.NaN;
      expect(after).toBeGreaterThanOrEqual(range.least);
      expect(after).toBeLessThanOrEqual(range.most);
      // 30 % of the roomier side, which is at least half the range: 2.9 mm, less half a millimetre of rounding.
      expect(Math.abs(after - overlap)).toBeGreaterThanOrEqual(2.8 - 0.5);
    }),
  );
});

test('a range of one value, or of none in whole millimetres, is left alone', () => {
  const base = new Map([['overlap', millimetres(30)]]);
  expect(variedStyle(1, 0, base, { overlap: { least: 30, most: 30 } })).toEqual(base);
  expect(variedStyle(1, 0, base, { overlap: { least: 30.2, most: 30.4 } })).toEqual(base);
});

test('angles stay, and a measure of the exercise’s own varies too', () => {
  const varied = variedStyle(
    1,
    0,
    new Map([
      ['tilt', radians(0.2)],
      ['top-button', millimetres(100)],
    ]),
  );
  expect(varied.get('tilt')).toEqual(radians(0.2));
  expect(Math.abs((varied.get('top-button')?.value ?? 100) - 100)).toBeGreaterThanOrEqual(24);
});
