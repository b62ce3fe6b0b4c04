import fc from 'fast-check';
import { expect, test } from 'vitest';
import { arcPath } from '../../src/geometry/arc.ts';
import { derivativeAt, pointAt, secondDerivativeAt, splitCubic, straight, subCubic } from '../../src/geometry/cubic.ts';
import { endOf, joinPaths, pieceAt, polyline, reversePath, startOf } from '../../src/geometry/path.ts';
import { anyAngle, anyCubic, anyPath, anyPoint, fraction } from './arbitrary.ts';
import { bezierOf, casteljau, gap, samples, secondOf } from './oracle.ts';

const MANY = { numRuns: 2000 };

test('a point of a piece is the one de Casteljau constructs, and exact at the ends', () => {
  fc.assert(
    fc.property(anyCubic, fraction, (c, t) => {
      expect(gap(pointAt(c, t), casteljau(c, t))).toBeLessThan(1e-11);
      expect(gap(pointAt(c, 0), c.p0)).toBe(0);
      expect(gap(pointAt(c, 1), c.p3)).toBe(0);
    }),
    MANY,
  );
});

test('the derivatives are those of bezier-js', () => {
  fc.assert(
    fc.property(anyCubic, fraction, (c, t) => {
      const other = bezierOf(c);
      expect(gap(derivativeAt(c, t), other.derivative(t))).toBeLessThan(1e-9);
      expect(gap(secondDerivativeAt(c, t), secondOf(other, t))).toBeLessThan(1e-9);
    }),
    MANY,
  );
});

test('a part of a piece is the piece between its parameters, forward and backward', () => {
  fc.assert(
    fc.property(anyCubic, fraction, fraction, fraction, (c, t0, t1, t) => {
      expect(gap(casteljau(subCubic(c, t0, t1), t), casteljau(c, t0 + (t1 - t0) * t))).toBeLessThan(1e-10);
      const [before, after] = splitCubic(c, t0);
      expect(gap(casteljau(before, t), casteljau(c, t0 * t))).toBeLessThan(1e-10);
      expect(gap(casteljau(after, t), casteljau(c, t0 + (1 - t0) * t))).toBeLessThan(1e-10);
      expect(before.p3).toBe(after.p0);
    }),
    MANY,
  );
});

test('a path reversed twice is the same path, and once starts where it ended', () => {
  fc.assert(
    fc.property(anyPath, (path) => {
      expect(reversePath(reversePath(path))).toEqual(path);
      expect(startOf(reversePath(path))).toEqual(endOf(path));
      expect(
        samples(reversePath(path), 4)
          .reverse()
          .every((p, i) => gap(p, samples(path, 4)[i] ?? p) < 1e-9),
      ).toBe(true);
    }),
    { numRuns: 500 },
  );
});

test('paths that meet are joined into one, at the very same points', () => {
  const one = [straight({ x: 0, y: 0 }, { x: 10, y: 0 })];
  const near = [straight({ x: 10, y: 5e-8 }, { x: 10, y: 10 })];
  const joined = joinPaths([one, near]) as NonNullable<ReturnType<typeof joinPaths>>;
  expect(joined).toHaveLength(2);
  expect(pieceAt(joined, 1).p0).toBe(pieceAt(joined, 0).p3);
  expect(joinPaths([one, [straight({ x: 10, y: 1e-6 }, { x: 10, y: 10 })]])).toBeNull();
  expect(joinPaths([])).toBeNull();
  expect(joinPaths([one])).toEqual(one);
});

test('straight runs pass over points that coincide', () => {
  const [a, b] = [
    { x: 0, y: 0 },
    { x: 3, y: 4 },
  ];
  expect(polyline([a, a, b, b])).toEqual([straight(a, b)]);
  expect(polyline([a])).toBeNull();
  expect(polyline([a, { x: 5e-8, y: 0 }])).toBeNull();
  expect(polyline([])).toBeNull();
});

test('a path has no piece outside it', () => {
  expect(() => pieceAt([], 0)).toThrow(RangeError);
});

test('an arc of any sweep keeps its radius to 1e-7 mm at 500 mm, and its ends', () => {
  fc.assert(
    fc.property(
      anyPoint,
      fc.double({ min: 0.01, max: 500, noNaN: true }),
      anyAngle,
      fc.double({ min: -13, max: 13, noNaN: true }),
      (centre, r, from, sweep) => {
        const arc = arcPath(centre, r, from, sweep);
        for (const p of samples(arc, 8)) expect(Math.abs(gap(p, centre) - r)).toBeLessThan(1e-7);
        expect(gap(startOf(arc), { x: centre.x + r * Math.cos(from), y: centre.y + r * Math.sin(from) })).toBeLessThan(
          1e-10,
        );
        const to = from + sweep;
        expect(gap(endOf(arc), { x: centre.x + r * Math.cos(to), y: centre.y + r * Math.sin(to) })).toBeLessThan(1e-9);
      },
    ),
    { numRuns: 300 },
  );
});

test('an arc of no sweep or no radius is a point', () => {
  for (const arc of [arcPath({ x: 1, y: 2 }, 5, 0, 0), arcPath({ x: 1, y: 2 }, 0, 0, 1)]) {
    expect(arc).toHaveLength(1);
    expect(gap(startOf(arc), endOf(arc))).toBe(0);
  }
});
