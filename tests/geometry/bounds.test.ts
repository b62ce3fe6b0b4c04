import fc from 'fast-check';
import { expect, test } from 'vitest';
import { arcPath } from '../../src/geometry/arc.ts';
import { boundsOf, pointsBounds } from '../../src/geometry/bounds.ts';
import type { Path } from '../../src/geometry/cubic.ts';
import type { Point } from '../../src/geometry/point.ts';
import { anyPath, anyPoint, patternCubic } from './arbitrary.ts';
import { bezierOf, casteljau, golden } from './oracle.ts';

test('the box is the tightest about the path: brute force finds the same extremes', () => {
  fc.assert(
    fc.property(anyPath, (path) => {
      const { min, max } = boundsOf(path);
      for (const [ours, off] of [
        [min.x, (p: Point) => p.x],
        [min.y, (p: Point) => p.y],
        [-max.x, (p: Point) => -p.x],
        [-max.y, (p: Point) => -p.y],
      ] as const) {
        expect(Math.abs(ours - least(path, off))).toBeLessThan(1e-6);
      }
    }),
    { numRuns: 500 },
  );
});

/** The least value of `off` along the path: every sample no greater than its neighbours, bettered. */
function least(path: Path, off: (p: Point) => number): number {
  return Math.min(
    ...path.flatMap((c) => {
      const at = (t: number) => off(casteljau(c, t));
      const row = Array.from({ length: 401 }, (_, k) => at(k / 400));
      const lows = [...row.keys()].filter((k) => lowAt(row, k));
      return [...lows.map((k) => golden(at, Math.max(0, k - 1) / 400, Math.min(400, k + 1) / 400)), ...row];
    }),
  );
}

function lowAt(row: readonly number[], k: number): boolean {
  const here = row[k] as number;
  return here <= (row[k - 1] ?? here) && here <= (row[k + 1] ?? here);
}

// Of a cubic that is nearly a parabola bezier-js may miss an extreme, and others it finds to about 1e-6 mm.
test('the box of a pattern curve is that of bezier-js', () => {
  fc.assert(
    fc.property(patternCubic, (c) => {
      const { min, max } = boundsOf([c]);
      const { x, y } = bezierOf(c).bbox();
      for (const off of [min.x - x.min, max.x - x.max, min.y - y.min, max.y - y.max]) {
        expect(Math.abs(off)).toBeLessThan(1e-4);
      }
    }),
    { numRuns: 1000 },
  );
});

test('a full circle has the box of its diameter', () => {
  fc.assert(
    fc.property(anyPoint, fc.double({ min: 1, max: 500, noNaN: true }), ({ x, y }, r) => {
      const { min, max } = boundsOf(arcPath({ x, y }, r, 0.3, 2 * Math.PI));
      for (const off of [min.x - x + r, min.y - y + r, max.x - x - r, max.y - y - r]) {
        expect(Math.abs(off)).toBeLessThan(1e-7);
      }
    }),
    { numRuns: 300 },
  );
});

test('no points have an empty box', () => {
  expect(pointsBounds([]).min.x).toBe(Number.POSITIVE_INFINITY);
  expect(pointsBounds([{ x: 1, y: 2 }])).toEqual({ min: { x: 1, y: 2 }, max: { x: 1, y: 2 } });
});
