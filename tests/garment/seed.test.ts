import { expect, test } from 'vitest';
import { chanceOf, hashOf } from '../../src/garment/seed.ts';

// Test values of FNV-1a, 32 bits, from the algorithm's own published list (Fowler, Noll and Vo).
test.each([
  ['', 0x811c9dc5],
  ['a', 0xe40c292c],
  ['b', 0xe70c2de5],
  ['foobar', 0xbf9cf968],
])('the hash of %o is the published one', (text, hash) => {
  expect(hashOf(text) >>> 0).toBe(hash);
});

test('a name hashes alike however its accents were typed', () => {
  expect(hashOf('Zoe\u0308')).toBe(hashOf('Zo\u00eb'));
});

test('the same seed gives the same numbers, pinned', () => {
  const chance = chanceOf('gorgeline');
  expect(Array.from({ length: 5 }, () => chance.whole(1, 100))).toMatchInlineSnapshot(`
    [
      71,
      86,
      19,
      63,
      31,
    ]
  `);
  expect(Array.from({ length: 3 }, () => chance.normal())).toMatchInlineSnapshot(`
    [
      -1.2550283670425415,
      -0.23559415340423584,
      0.8586286902427673,
    ]
  `);
});

test('normal values have mean 0, deviation 1 and the tails of a normal distribution', () => {
  const chance = chanceOf('many');
  const count = 40_000;
  const values = Array.from({ length: count }, () => chance.normal());
  const mean = values.reduce((sum, v) => sum + v, 0) / count;
  const variance = values.reduce((sum, v) => sum + (v - mean) ** 2, 0) / count;
  const beyond = (limit: number): number => values.filter((v) => Math.abs(v) > limit).length / count;
  // Four standard errors: 4 / sqrt(40,000) = 0.02 for the mean, 0.028 for the variance.
  expect(Math.abs(mean)).toBeLessThan(0.02);
  expect(Math.abs(variance - 1)).toBeLessThan(0.028);
  // 31.73 % and 4.55 % of a normal distribution lie beyond one and two deviations.
  expect(Math.abs(beyond(1) - 0.3173)).toBeLessThan(0.01);
  expect(Math.abs(beyond(2) - 0.0455)).toBeLessThan(0.005);
});
