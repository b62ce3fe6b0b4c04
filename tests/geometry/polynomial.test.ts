import fc from 'fast-check';
import { expect, test } from 'vitest';
import { polynomialAt, signChanges, zerosOf } from '../../src/geometry/polynomial.ts';

/** The coefficients of the polynomial with these roots, constant first. */
function fromRoots(roots: readonly number[], lead: number): number[] {
  return roots.reduce(
    (p, root) => {
      const next = new Array<number>(p.length + 1).fill(0);
      for (const [i, k] of p.entries()) {
        next[i] = (next[i] as number) - root * k;
        next[i + 1] = (next[i + 1] as number) + k;
      }
      return next;
    },
    [lead],
  );
}

const lead = fc.double({ min: 0.5, max: 1e4, noNaN: true }).chain((k) => fc.constantFrom(k, -k));
const apart = fc
  .uniqueArray(fc.integer({ min: -40, max: 80 }), { minLength: 1, maxLength: 6 })
  .map((list) => list.map((n) => n / 40 + 0.0123).sort((a, b) => a - b));

test('every simple root between 0 and 1 is found, and no other', () => {
  fc.assert(
    fc.property(apart, lead, (roots, k) => {
      const p = fromRoots(roots, k);
      const out = new Float64Array(7);
      const found = [...out.subarray(0, signChanges(p, roots.length, out))];
      const wanted = roots.filter((t) => t > 0 && t < 1);
      expect(found).toHaveLength(wanted.length);
      for (const [i, t] of wanted.entries()) expect(Math.abs((found[i] as number) - t)).toBeLessThan(1e-8);
    }),
    { numRuns: 5000 },
  );
});

test('a double root, a touch, is a zero', () => {
  fc.assert(
    fc.property(fc.integer({ min: 1, max: 39 }), fc.integer({ min: 41, max: 80 }), lead, (twice, once, k) => {
      const p = fromRoots([twice / 40, twice / 40, once / 40 + 0.01], k);
      const zeros = zerosOf(p, 3, Math.abs(k) * 1e-12) ?? [];
      // Rounding may part a double root into two, near each other; it may not lose it.
      expect(zeros.length).toBeGreaterThan(0);
      for (const t of zeros) expect(Math.abs(t - twice / 40)).toBeLessThan(1e-6);
    }),
    { numRuns: 1000 },
  );
});

test('a zero at either end counts, once', () => {
  expect(zerosOf([0, 1], 1, 1e-9)).toEqual([0]);
  expect(zerosOf([-1, 1], 1, 1e-9)).toEqual([1]);
  expect(zerosOf([0, 1, -1], 2, 1e-9)).toEqual([0, 1]);
  expect(zerosOf([1e-10, 1], 1, 1e-9)).toEqual([0]);
});

test('a triple root changes sign once', () => {
  const out = new Float64Array(7);
  expect(signChanges(fromRoots([0.5, 0.5, 0.5], 1), 3, out)).toBe(1);
  expect(out[0]).toBeCloseTo(0.5, 4);
});

test('a polynomial that is nothing, or within the touch, has no zeros of its own', () => {
  expect(zerosOf([0, 0, 0, 0], 3, 1e-9)).toBeNull();
  expect(zerosOf([1e-10, -2e-10, 0, 0], 3, 1e-9)).toBeNull();
  expect(signChanges([0, 0, 0, 0, 0, 0], 5, new Float64Array(7))).toBe(0);
});

test('a constant has no zeros', () => {
  expect(zerosOf([5], 0, 1e-9)).toEqual([]);
  expect(polynomialAt([5], 0, 0.3)).toBe(5);
});

test('not a number gives no zeros and does not hang', () => {
  expect(signChanges([Number.NaN, 1, 2, 3, 4, 5], 5, new Float64Array(7))).toBe(0);
});
