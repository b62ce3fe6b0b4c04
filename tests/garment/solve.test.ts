import fc from 'fast-check';
import { expect, test } from 'vitest';
import { solveRising } from '../../src/garment/solve.ts';

test('finds the zero of any rising cubic', () => {
  const coefficient = fc.double({ min: 0.05, max: 10, noNaN: true });
  fc.assert(
    fc.property(fc.double({ min: -9, max: 9, noNaN: true }), coefficient, coefficient, (zero, steep, bend) => {
      const found = solveRising((x) => steep * (x - zero) + bend * (x - zero) ** 3, -10, 10);
      expect(Math.abs((found ?? Number.NaN) - zero)).toBeLessThan(1e-6);
    }),
    { numRuns: 2000 },
  );
});

test('finds a zero at either end', () => {
  expect(solveRising((x) => x - 2, 2, 5)).toBeCloseTo(2, 8);
  expect(solveRising((x) => x - 5, 2, 5)).toBeCloseTo(5, 8);
});

test('says so when the ends do not bracket a zero', () => {
  expect(solveRising((x) => x + 1, 0, 1)).toBeNull();
  expect(solveRising((x) => x - 2, 0, 1)).toBeNull();
  expect(solveRising(() => Number.NaN, 0, 1)).toBeNull();
});
