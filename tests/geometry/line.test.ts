import fc from 'fast-check';
import { expect, test } from 'vitest';
import {
  angleFrom,
  crossLines,
  footOn,
  lineAlong,
  lineThrough,
  parallelAt,
  signedDistance,
  squareTo,
  stationOf,
} from '../../src/geometry/line.ts';
import { dot, heading } from '../../src/geometry/point.ts';
import { anyAngle, anyLine, anyPoint } from './arbitrary.ts';
import { gap } from './oracle.ts';

const MANY = { numRuns: 2000 };

test('two lines cross where determinants say, on both of them', () => {
  fc.assert(
    fc.property(anyPoint, anyPoint, anyPoint, anyPoint, (a, b, c, d) => {
      const one = lineThrough(a, b);
      const other = lineThrough(c, d);
      fc.pre(one !== null && other !== null);
      // Cramer's rule on the implicit equations.
      const det = (a.x - b.x) * (c.y - d.y) - (a.y - b.y) * (c.x - d.x);
      fc.pre(Math.abs(det) > 1e-3 * gap(a, b) * gap(c, d));
      const [p, q] = [a.x * b.y - a.y * b.x, c.x * d.y - c.y * d.x];
      const wanted = { x: (p * (c.x - d.x) - q * (a.x - b.x)) / det, y: (p * (c.y - d.y) - q * (a.y - b.y)) / det };
      const found = crossLines(one as NonNullable<typeof one>, other as NonNullable<typeof other>);
      expect(found && gap(found, wanted)).toBeLessThan(1e-6);
    }),
    MANY,
  );
});

test('parallel lines, and a line and itself, do not cross', () => {
  fc.assert(
    fc.property(anyLine, fc.double({ min: -500, max: 500, noNaN: true }), (line, d) => {
      expect(crossLines(line, parallelAt(line, d))).toBeNull();
      expect(crossLines(line, line)).toBeNull();
    }),
    MANY,
  );
});

test('the foot is square to the line and the nearest point of it', () => {
  fc.assert(
    fc.property(anyLine, anyPoint, fc.double({ min: -10, max: 10, noNaN: true }), (line, p, aside) => {
      const foot = footOn(line, p);
      expect(Math.abs(dot(line.direction, { x: p.x - foot.x, y: p.y - foot.y }))).toBeLessThan(1e-9);
      expect(Math.abs(gap(foot, p) - Math.abs(signedDistance(line, p)))).toBeLessThan(1e-9);
      const other = { x: foot.x + aside * line.direction.x, y: foot.y + aside * line.direction.y };
      expect(gap(other, p)).toBeGreaterThanOrEqual(gap(foot, p) - 1e-9);
      expect(Math.abs(stationOf(line, other) - stationOf(line, p) - aside)).toBeLessThan(1e-9);
    }),
    MANY,
  );
});

test('a parallel lies at its distance, positive to the left', () => {
  fc.assert(
    fc.property(anyLine, anyPoint, fc.double({ min: -500, max: 500, noNaN: true }), (line, p, d) => {
      expect(Math.abs(signedDistance(line, p) - signedDistance(parallelAt(line, d), p) - d)).toBeLessThan(1e-9);
    }),
    MANY,
  );
  const east = { through: { x: 0, y: 0 }, direction: { x: 1, y: 0 } };
  expect(signedDistance(east, { x: 5, y: 3 })).toBe(3);
});

test('the angle between lines takes them as undirected', () => {
  fc.assert(
    fc.property(anyPoint, anyAngle, fc.double({ min: -1.57, max: 1.57, noNaN: true }), (p, way, turn) => {
      const a = lineAlong(p, heading(way));
      const b = lineAlong(p, heading(way + turn));
      const back = lineAlong(p, heading(way + turn + Math.PI));
      fc.pre(a !== null && b !== null && back !== null);
      expect(Math.abs(angleFrom(a as NonNullable<typeof a>, b as NonNullable<typeof b>) - turn)).toBeLessThan(1e-9);
      expect(Math.abs(angleFrom(a as NonNullable<typeof a>, back as NonNullable<typeof back>) - turn)).toBeLessThan(
        1e-9,
      );
    }),
    MANY,
  );
});

test('a square line is at right angles, turned to the left', () => {
  const line = { through: { x: 0, y: 0 }, direction: { x: 1, y: 0 } };
  expect(squareTo(line, { x: 5, y: 5 }).direction).toEqual({ x: -0, y: 1 });
});

test('coincident points and directions of no length give no line', () => {
  const p = { x: 1, y: 1 };
  expect(lineThrough(p, p)).toBeNull();
  expect(lineThrough(p, { x: 1, y: 1 + 5e-8 })).toBeNull();
  expect(lineAlong(p, { x: 0, y: 0 })).toBeNull();
  expect(lineAlong(p, { x: Number.NaN, y: 0 })).toBeNull();
});
