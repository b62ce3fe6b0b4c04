import fc from 'fast-check';
import { expect, test } from 'vitest';
import { arcPath } from '../../src/geometry/arc.ts';
import { lengthOf } from '../../src/geometry/length.ts';
import { endOf, polyline, reversePath, startOf } from '../../src/geometry/path.ts';
import type { Point } from '../../src/geometry/point.ts';
import { directionAtStation, pieceBetween, pointAtStation, splitAtStation } from '../../src/geometry/station.ts';
import { anyAngle, anyPath, anyPoint, fraction, inside, patternCubic } from './arbitrary.ts';
import { gap, paperOf } from './oracle.ts';

const MANY = { numRuns: 2000 };
const at = (path: Parameters<typeof pointAtStation>[0], s: number) => pointAtStation(path, s) as Point;

test('along an arc the point and the direction at a station are those of the circle', () => {
  fc.assert(
    fc.property(anyPoint, fc.double({ min: 1, max: 500, noNaN: true }), anyAngle, fraction, (centre, r, from, part) => {
      const angle = from + part * 2;
      const arc = arcPath(centre, r, from, 2);
      const s = part * lengthOf(arc);
      expect(gap(at(arc, s), { x: centre.x + r * Math.cos(angle), y: centre.y + r * Math.sin(angle) })).toBeLessThan(
        1e-6,
      );
      expect(gap(directionAtStation(arc, s) as Point, { x: -Math.sin(angle), y: Math.cos(angle) })).toBeLessThan(1e-6);
    }),
    MANY,
  );
});

test('the run to a station is as long as the station says, on any path', () => {
  fc.assert(
    fc.property(anyPath, fraction, (path, part) => {
      const whole = lengthOf(path);
      const s = part * whole;
      const halves = splitAtStation(path, s);
      if (s < 1e-6 || whole - s < 1e-6) return;
      expect(halves).not.toBeNull();
      const [before, after] = halves as NonNullable<typeof halves>;
      expect(Math.abs(lengthOf(before) - s)).toBeLessThan(1e-6);
      expect(Math.abs(lengthOf(after) - (whole - s))).toBeLessThan(1e-6);
      expect(gap(endOf(before), startOf(after))).toBeLessThan(1e-9);
      expect(gap(endOf(before), at(path, s))).toBeLessThan(1e-6);
    }),
    MANY,
  );
});

test('a piece between two stations runs from the one to the other, backward too', () => {
  fc.assert(
    fc.property(anyPath, fraction, fraction, (path, p, q) => {
      const [s0, s1] = [p * lengthOf(path), q * lengthOf(path)];
      const piece = pieceBetween(path, s0, s1);
      if (Math.abs(s1 - s0) < 1e-6) return;
      expect(piece).not.toBeNull();
      const found = piece as NonNullable<typeof piece>;
      expect(Math.abs(lengthOf(found) - Math.abs(s1 - s0))).toBeLessThan(1e-6);
      expect(gap(startOf(found), at(path, s0))).toBeLessThan(1e-6);
      expect(gap(endOf(found), at(path, s1))).toBeLessThan(1e-6);
    }),
    MANY,
  );
});

test('stations run the other way on the reversed path', () => {
  fc.assert(
    fc.property(anyPath, fraction, (path, part) => {
      const whole = lengthOf(path);
      expect(gap(at(path, part * whole), at(reversePath(path), whole - part * whole))).toBeLessThan(1e-6);
    }),
    MANY,
  );
});

test('paper finds the same point at the same station of a pattern curve, as near as it measures', () => {
  fc.assert(
    fc.property(patternCubic, inside, (c, part) => {
      const s = part * lengthOf([c]);
      expect(gap(at([c], s), paperOf([c]).getPointAt(s))).toBeLessThan(1e-3);
    }),
    { numRuns: 500 },
  );
});

test('there is no station before the start, past the end, or at no number', () => {
  const path = polyline([
    { x: 0, y: 0 },
    { x: 30, y: 40 },
    { x: 30, y: 90 },
  ]) as NonNullable<ReturnType<typeof polyline>>;
  for (const s of [-1, -1e-6, 100 + 1e-6, 200, Number.NaN, Number.POSITIVE_INFINITY]) {
    expect(pointAtStation(path, s)).toBeNull();
    expect(directionAtStation(path, s)).toBeNull();
    expect(splitAtStation(path, s)).toBeNull();
    expect(pieceBetween(path, 10, s)).toBeNull();
  }
  expect(splitAtStation(path, 0)).toBeNull();
  expect(splitAtStation(path, 100)).toBeNull();
  expect(pieceBetween(path, 20, 20)).toBeNull();
  expect(pointAtStation(path, 100)).toEqual({ x: 30, y: 90 });
  expect(pointAtStation(path, 50)).toEqual({ x: 30, y: 40 });
});

test('at a corner the direction is that in which it is left, and a cut makes no sliver', () => {
  const path = polyline([
    { x: 0, y: 0 },
    { x: 50, y: 0 },
    { x: 50, y: 50 },
  ]) as NonNullable<ReturnType<typeof polyline>>;
  expect(directionAtStation(path, 50)).toEqual({ x: 0, y: 1 });
  expect(splitAtStation(path, 50)?.map((half) => half.length)).toEqual([1, 1]);
  expect(splitAtStation(path, 50 + 5e-8)?.map((half) => half.length)).toEqual([1, 1]);
});

test('a path that is a point has a place but no direction', () => {
  const p = { x: 3, y: 4 };
  const path = [{ p0: p, p1: p, p2: p, p3: p }];
  expect(pointAtStation(path, 0)).toEqual(p);
  expect(directionAtStation(path, 0)).toBeNull();
  expect(splitAtStation(path, 0)).toBeNull();
});
