import fc from 'fast-check';
import { expect, test } from 'vitest';
import { arcPath } from '../../src/geometry/arc.ts';
import { bowOf, greatestBow } from '../../src/geometry/bow.ts';
import { straight } from '../../src/geometry/cubic.ts';
import type { Point } from '../../src/geometry/point.ts';
import { anyPath, anyPoint } from './arbitrary.ts';
import { bruteDistance, gap, samples } from './oracle.ts';

test('the bow of an arc is its sagitta, positive to the left', () => {
  fc.assert(
    fc.property(
      anyPoint,
      fc.double({ min: 1, max: 500, noNaN: true }),
      fc.double({ min: 0.05, max: 3.1, noNaN: true }),
      (centre, r, sweep) => {
        const sagitta = r * (1 - Math.cos(sweep / 2));
        expect(Math.abs(bowOf(arcPath(centre, r, 0.4, sweep)) + sagitta)).toBeLessThan(1e-6);
        expect(Math.abs(bowOf(arcPath(centre, r, 0.4, -sweep)) - sagitta)).toBeLessThan(1e-6);
      },
    ),
    { numRuns: 1000 },
  );
});

test('no sample lies further from the chord than the bow', () => {
  fc.assert(
    fc.property(anyPath, (path) => {
      const [p, q] = [samples(path, 1)[0], samples(path, 1).at(-1)] as [Point, Point];
      fc.pre(gap(p, q) > 1e-3);
      const off = (r: Point) => ((q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x)) / gap(p, q);
      const furthest = Math.max(...samples(path, 200).map((r) => Math.abs(off(r))));
      const bow = Math.abs(bowOf(path));
      expect(bow).toBeGreaterThan(furthest - 1e-6);
      expect(bow).toBeLessThan(furthest + 0.2);
    }),
    { numRuns: 500 },
  );
});

test('a straight run has no bow, and a closed path no chord', () => {
  expect(bowOf([straight({ x: 0, y: 0 }, { x: 9, y: 9 })])).toBeCloseTo(0, 9);
  expect(bowOf(arcPath({ x: 0, y: 0 }, 50, 0, 2 * Math.PI))).toBe(0);
});

test('where the bow is greatest lies on the path, and so far square from the line through its ends', () => {
  fc.assert(
    fc.property(anyPath, (path) => {
      const [p, q] = [samples(path, 1)[0], samples(path, 1).at(-1)] as [Point, Point];
      fc.pre(gap(p, q) > 1e-3);
      const bow = greatestBow(path);
      if (bow === null) throw new Error('There is a chord, and no bow.');
      expect(bruteDistance(path, bow.at)).toBeLessThan(1e-6);
      const { at, left, by } = bow;
      const foot = { x: at.x - left.x * by, y: at.y - left.y * by };
      const off = ((q.x - p.x) * (foot.y - p.y) - (q.y - p.y) * (foot.x - p.x)) / gap(p, q);
      expect(Math.abs(off)).toBeLessThan(1e-6);
      expect(Math.abs((q.x - p.x) * left.x + (q.y - p.y) * left.y)).toBeLessThan(1e-6 * gap(p, q));
    }),
    { numRuns: 500 },
  );
});
