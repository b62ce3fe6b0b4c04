import fc from 'fast-check';
import { expect, test } from 'vitest';
import { arcPath } from '../../src/geometry/arc.ts';
import { greatestDistance, partFurther } from '../../src/geometry/compare.ts';
import { type Path, straight } from '../../src/geometry/cubic.ts';
import { offsetPath } from '../../src/geometry/offset.ts';
import { polyline, reversePath } from '../../src/geometry/path.ts';
import { anyPath, anyPoint, patternCubic } from './arbitrary.ts';
import { bruteDistance, gap, samples } from './oracle.ts';

test('the greatest distance is that of brute force, both ways', () => {
  fc.assert(
    fc.property(patternCubic, patternCubic, (a, b) => {
      const found = greatestDistance([a], [b]);
      const brute = Math.max(
        ...samples([a], 60).map((p) => bruteDistance([b], p)),
        ...samples([b], 60).map((p) => bruteDistance([a], p)),
      );
      expect(found.distance).toBeGreaterThan(brute - 1e-6);
      // Between samples the distance rises by no more than half the way between them.
      expect(found.distance).toBeLessThan(brute + 600 / 60);
      expect(Math.abs(bruteDistance(found.on === 'a' ? [b] : [a], found.at) - found.distance)).toBeLessThan(1e-6);
      expect(bruteDistance(found.on === 'a' ? [a] : [b], found.at)).toBeLessThan(1e-6);
    }),
    { numRuns: 150 },
  );
});

test('no sample of either path is further from the other, whatever the paths', () => {
  fc.assert(
    fc.property(anyPath, anyPath, (a, b) => {
      const { distance } = greatestDistance(a, b);
      for (const p of samples(a, 20)) expect(bruteDistance(b, p)).toBeLessThan(distance + 1e-3);
      for (const p of samples(b, 20)) expect(bruteDistance(a, p)).toBeLessThan(distance + 1e-3);
    }),
    { numRuns: 150 },
  );
});

test('paths part further than anything short of their greatest distance, and no further than that', () => {
  fc.assert(
    fc.property(anyPath, anyPath, fc.double({ min: 0, max: 2, noNaN: true }), (a, b, share) => {
      const { distance } = greatestDistance(a, b);
      for (const most of [distance * share, distance, 1e-7]) expect(partFurther(a, b, most)).toBe(distance > most);
    }),
    { numRuns: 200 },
  );
});

test('it is the same in either order, nothing for a path and itself, whichever way it runs', () => {
  fc.assert(
    fc.property(patternCubic, patternCubic, (a, b) => {
      expect(Math.abs(greatestDistance([a], [b]).distance - greatestDistance([b], [a]).distance)).toBeLessThan(1e-6);
      expect(greatestDistance([a], [a]).distance).toBeLessThan(1e-7);
      expect(greatestDistance([a], reversePath([a])).distance).toBeLessThan(1e-7);
    }),
    { numRuns: 300 },
  );
});

test('arcs about one centre are as far apart as their radii', () => {
  fc.assert(
    fc.property(
      anyPoint,
      fc.double({ min: 20, max: 400, noNaN: true }),
      fc.double({ min: 0.01, max: 100, noNaN: true }),
      (centre, r, d) => {
        const { distance } = greatestDistance(arcPath(centre, r, 0, 1.5), arcPath(centre, r + d, 0, 1.5));
        expect(Math.abs(distance - d)).toBeLessThan(1e-6);
      },
    ),
    { numRuns: 100 },
  );
});

test('a curve and its parallel are as far apart as it was moved', () => {
  fc.assert(
    fc.property(patternCubic, fc.double({ min: 0.1, max: 8, noNaN: true }), (c, d) => {
      const made = offsetPath([c], d) as Path;
      expect(greatestDistance([c], made).distance).toBeGreaterThan(d - 1e-6);
      expect(greatestDistance([c], made).distance).toBeLessThan(d + 1e-6);
    }),
    { numRuns: 100 },
  );
});

test('straight runs are furthest apart at an end', () => {
  fc.assert(
    fc.property(anyPoint, anyPoint, anyPoint, anyPoint, (p, q, r, s) => {
      fc.pre(gap(p, q) > 1 && gap(r, s) > 1);
      const [a, b] = [[straight(p, q)], [straight(r, s)]];
      const wanted = Math.max(...[p, q].map((e) => bruteDistance(b, e)), ...[r, s].map((e) => bruteDistance(a, e)));
      expect(Math.abs(greatestDistance(a, b).distance - wanted)).toBeLessThan(1e-6);
    }),
    { numRuns: 1000 },
  );
});

test('a dent is found between the ends, on the path that has it', () => {
  const flat = polyline([
    { x: 0, y: 0 },
    { x: 100, y: 0 },
  ]) as Path;
  const dented = polyline([
    { x: 0, y: 0 },
    { x: 49.9, y: 0 },
    { x: 50, y: 7 },
    { x: 50.1, y: 0 },
    { x: 100, y: 0 },
  ]) as Path;
  expect(greatestDistance(flat, dented)).toEqual({ distance: expect.closeTo(7, 6), at: { x: 50, y: 7 }, on: 'b' });
  expect(greatestDistance(dented, flat)).toEqual({ distance: expect.closeTo(7, 6), at: { x: 50, y: 7 }, on: 'a' });
});
