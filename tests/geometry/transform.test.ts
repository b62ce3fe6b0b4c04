import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Path } from '../../src/geometry/cubic.ts';
import { lengthOf } from '../../src/geometry/length.ts';
import { parallelAt, signedDistance, stationOf } from '../../src/geometry/line.ts';
import { add } from '../../src/geometry/point.ts';
import {
  mirrorLine,
  mirrorPath,
  mirrorPoint,
  shiftPath,
  turnLine,
  turnPath,
  turnPoint,
} from '../../src/geometry/transform.ts';
import { anyAngle, anyLine, anyPath, anyPoint, fraction } from './arbitrary.ts';
import { casteljau, gap } from './oracle.ts';

const MANY = { numRuns: 2000 };
const first = (path: Path) => path[0] as Path[number];

test('a mirrored point is as far from the line on the other side, at the same station', () => {
  fc.assert(
    fc.property(anyLine, anyPoint, (over, p) => {
      const image = mirrorPoint(p, over);
      expect(Math.abs(signedDistance(over, image) + signedDistance(over, p))).toBeLessThan(1e-9);
      expect(Math.abs(stationOf(over, image) - stationOf(over, p))).toBeLessThan(1e-9);
      expect(gap(mirrorPoint(image, over), p)).toBeLessThan(1e-9);
    }),
    MANY,
  );
});

test('a mirrored line runs through mirrored points, and its left is its right', () => {
  fc.assert(
    fc.property(anyLine, anyLine, anyPoint, (line, over, p) => {
      const image = mirrorLine(line, over);
      expect(Math.abs(signedDistance(image, mirrorPoint(p, over)) + signedDistance(line, p))).toBeLessThan(1e-9);
      expect(Math.abs(Math.hypot(image.direction.x, image.direction.y) - 1)).toBeLessThan(1e-12);
    }),
    MANY,
  );
});

test('a mirrored, turned or shifted path goes through the points moved the same way, and keeps its length', () => {
  fc.assert(
    fc.property(anyPath, anyLine, anyPoint, anyAngle, fraction, (path, over, q, angle, t) => {
      const p = casteljau(first(path), t);
      expect(gap(casteljau(first(mirrorPath(path, over)), t), mirrorPoint(p, over))).toBeLessThan(1e-9);
      expect(gap(casteljau(first(turnPath(path, q, angle)), t), turnPoint(p, q, angle))).toBeLessThan(1e-9);
      expect(gap(casteljau(first(shiftPath(path, q)), t), add(p, q))).toBeLessThan(1e-9);
      for (const moved of [mirrorPath(path, over), turnPath(path, q, angle), shiftPath(path, q)]) {
        expect(Math.abs(lengthOf(moved) - lengthOf(path))).toBeLessThan(1e-6);
      }
    }),
    MANY,
  );
});

test('turning is rotation of the complex plane', () => {
  fc.assert(
    fc.property(anyPoint, anyPoint, anyAngle, (p, centre, angle) => {
      const radius = gap(p, centre);
      const way = Math.atan2(p.y - centre.y, p.x - centre.x) + angle;
      const wanted = { x: centre.x + radius * Math.cos(way), y: centre.y + radius * Math.sin(way) };
      expect(gap(turnPoint(p, centre, angle), wanted)).toBeLessThan(1e-9);
      expect(gap(turnPoint(turnPoint(p, centre, angle), centre, -angle), p)).toBeLessThan(1e-9);
    }),
    MANY,
  );
});

test('turned lines keep points on their own side', () => {
  fc.assert(
    fc.property(anyLine, anyPoint, anyPoint, anyAngle, (line, p, q, angle) => {
      expect(
        Math.abs(signedDistance(turnLine(line, q, angle), turnPoint(p, q, angle)) - signedDistance(line, p)),
      ).toBeLessThan(1e-9);
    }),
    MANY,
  );
});

test('a point on the fold stays, and two folds on parallel lines shift by twice their distance', () => {
  fc.assert(
    fc.property(anyLine, anyPoint, fc.double({ min: -300, max: 300, noNaN: true }), (over, p, d) => {
      expect(gap(mirrorPoint(over.through, over), over.through)).toBeLessThan(1e-9);
      const twice = mirrorPoint(mirrorPoint(p, over), parallelAt(over, d));
      expect(gap(twice, { x: p.x - 2 * d * over.direction.y, y: p.y + 2 * d * over.direction.x })).toBeLessThan(1e-9);
    }),
    MANY,
  );
});
