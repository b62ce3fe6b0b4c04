import fc from 'fast-check';
import { expect, test } from 'vitest';
import { arcPath } from '../../src/geometry/arc.ts';
import { straight } from '../../src/geometry/cubic.ts';
import { nearestOn, nearestPoint, placeWithin } from '../../src/geometry/nearest.ts';
import { polyline } from '../../src/geometry/path.ts';
import { pointAtStation } from '../../src/geometry/station.ts';
import { anyAngle, anyCubic, anyPath, anyPoint } from './arbitrary.ts';
import { bezierOf, bruteDistance, gap, paperOf, paperPoint } from './oracle.ts';

const MANY = { numRuns: 2000 };

test('nothing found by brute force is nearer, nor is the nearest further', () => {
  fc.assert(
    fc.property(anyPath, anyPoint, (path, p) => {
      const brute = bruteDistance(path, p);
      const { distance } = nearestOn(path, p);
      expect(distance).toBeLessThan(brute + 1e-8);
      // Brute force may miss the bottom of a narrow loop between its samples; it never finds less than there is.
      expect(distance).toBeGreaterThan(bruteDistance(path, p) - 1e-6);
    }),
    { numRuns: 400 },
  );
});

test('neither bezier-js nor paper finds a nearer point', () => {
  fc.assert(
    fc.property(anyCubic, anyPoint, (c, p) => {
      const { distance } = nearestOn([c], p);
      // The distance bezier-js reports is not always that of the point it returns; the point counts.
      expect(distance).toBeLessThan(gap(bezierOf(c).project(p), p) + 1e-7);
      expect(distance).toBeLessThan(gap(paperOf([c]).getNearestPoint(paperPoint(p)), p) + 1e-7);
    }),
    MANY,
  );
});

test('the point, its distance and its station agree', () => {
  fc.assert(
    fc.property(anyPath, anyPoint, (path, p) => {
      const { point, station, distance } = nearestOn(path, p);
      expect(Math.abs(gap(point, p) - distance)).toBeLessThan(1e-9);
      const there = pointAtStation(path, station);
      expect(there && gap(there, point)).toBeLessThan(1e-6);
    }),
    MANY,
  );
});

test('the nearest point of an arc lies on the ray from its centre', () => {
  fc.assert(
    fc.property(
      anyPoint,
      fc.double({ min: 1, max: 500, noNaN: true }),
      anyAngle,
      fc.double({ min: 0.1, max: 1.9, noNaN: true }),
      fc.double({ min: 0.2, max: 3, noNaN: true }),
      (centre, r, from, part, reach) => {
        const ray = { x: Math.cos(from + part), y: Math.sin(from + part) };
        const p = { x: centre.x + r * reach * ray.x, y: centre.y + r * reach * ray.y };
        const { point, distance } = nearestOn(arcPath(centre, r, from, 2), p);
        expect(Math.abs(distance - Math.abs(r * reach - r))).toBeLessThan(1e-6);
        expect(gap(point, { x: centre.x + r * ray.x, y: centre.y + r * ray.y })).toBeLessThan(1e-5);
      },
    ),
    MANY,
  );
});

test('the foot on a straight run is square to it, and at its end when off the end', () => {
  const path = [straight({ x: 0, y: 0 }, { x: 100, y: 0 })];
  expect(nearestOn(path, { x: 30, y: 7 })).toEqual({
    point: { x: 30, y: expect.closeTo(0, 12) },
    station: expect.closeTo(30, 9),
    distance: expect.closeTo(7, 9),
  });
  expect(nearestOn(path, { x: 130, y: 40 })).toEqual({ point: { x: 100, y: 0 }, station: 100, distance: 50 });
});

test('of places equally near the earliest is given', () => {
  const path = polyline([
    { x: 0, y: 0 },
    { x: 10, y: 0 },
    { x: 10, y: 10 },
    { x: 0, y: 10 },
  ]) as NonNullable<ReturnType<typeof polyline>>;
  expect(nearestOn(path, { x: 5, y: 5 }).station).toBeCloseTo(5, 9);
});

test('on a path that is a point everything is nearest to it', () => {
  const p = { x: 3, y: 4 };
  expect(nearestOn([{ p0: p, p1: p, p2: p, p3: p }], { x: 0, y: 0 })).toEqual({ point: p, station: 0, distance: 5 });
});

test('a place within reach is found wherever one is, and none where none is', () => {
  fc.assert(
    fc.property(anyPath, anyPoint, fc.double({ min: 0.01, max: 400, noNaN: true }), (path, p, most) => {
      const { distance } = nearestOn(path, p);
      fc.pre(Math.abs(distance - most) > 1e-6);
      expect(placeWithin(path, p, most) !== null).toBe(distance < most);
      // Just within reach, and just out of it.
      expect(placeWithin(path, p, distance + 1e-6)).not.toBeNull();
      if (distance > 2e-6) expect(placeWithin(path, p, distance - 1e-6)).toBeNull();
    }),
    { numRuns: 400 },
  );
});

test('of a point that a path was drawn through the nearest is the point itself', () => {
  fc.assert(
    fc.property(anyPath, fc.nat(), (path, at) => {
      const { p0, p3 } = path[at % path.length] as (typeof path)[number];
      for (const p of [p0, p3]) expect(nearestPoint(path, p)).toEqual(p);
    }),
  );
});
