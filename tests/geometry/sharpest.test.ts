import fc from 'fast-check';
import { expect, test } from 'vitest';
import { arcPath } from '../../src/geometry/arc.ts';
import { type Path, straight } from '../../src/geometry/cubic.ts';
import { reversePath } from '../../src/geometry/path.ts';
import { sharpestTurn } from '../../src/geometry/sharpest.ts';
import { anyPath } from './arbitrary.ts';
import { bruteDistance } from './oracle.ts';

const radius = fc.double({ min: 20, max: 500, noNaN: true });

test('of an arc any stretch turns by its length over the radius', () => {
  fc.assert(
    fc.property(radius, fc.double({ min: 20, max: 60, noNaN: true }), (r, length) => {
      const { by } = sharpestTurn(arcPath({ x: 3, y: 4 }, r, 0.4, 3.5), length);
      // Less the turn of a step at either end.
      expect(by).toBeLessThan(length / r + 1e-6);
      expect(by).toBeGreaterThan((length - 3 * 4) / r);
    }),
  );
});

test('turns to either side are added up: two arcs that part from one another, each of its own stretch', () => {
  const first = arcPath({ x: 0, y: 0 }, 50, 0, 0.5);
  const end = first.at(-1)?.p3 ?? { x: Number.NaN, y: 0 };
  const second = arcPath({ x: 2 * end.x, y: 2 * end.y }, 50, 0.5 + Math.PI, -0.5);
  const { by } = sharpestTurn([...first, ...second], 200);
  expect(by).toBeCloseTo(1, 1);
});

test('a corner turns by its angle within any length, and lies there', () => {
  const corner = { x: 100, y: 0 };
  const path = [straight({ x: 0, y: 0 }, corner), straight(corner, { x: 200, y: 100 })];
  const turning = sharpestTurn(path, 50);
  expect(turning.by).toBeCloseTo(Math.PI / 4, 9);
  expect(turning.at).toEqual({ x: expect.closeTo(100, 6), y: expect.closeTo(0, 6) });
});

test('a small loop turns all round, and a cusp half round', () => {
  const loop: Path = [{ p0: { x: 0, y: 0 }, p1: { x: 9, y: 0 }, p2: { x: -4, y: 1 }, p3: { x: 5, y: 1 } }];
  expect(sharpestTurn(loop, 50).by).toBeGreaterThan(Math.PI);
  const cusp: Path = [{ p0: { x: 0, y: 0 }, p1: { x: 40, y: 30 }, p2: { x: 0, y: 30 }, p3: { x: 40, y: 0 } }];
  expect(sharpestTurn(cusp, 50).by).toBeGreaterThan(Math.PI);
});

test('a straight run turns nowhere, and neither does what has no length', () => {
  expect(sharpestTurn([straight({ x: 0, y: 0 }, { x: 90, y: 40 })], 50).by).toBeLessThan(1e-6);
  const nowhere = { x: 1, y: 1 };
  expect(sharpestTurn([straight(nowhere, nowhere)], 50)).toEqual({ by: 0, from: nowhere, at: nowhere, to: nowhere });
});

test('it is the same the other way round, and its places lie on the path', () => {
  fc.assert(
    fc.property(anyPath, (path) => {
      const there = sharpestTurn(path, 50);
      for (const place of [there.from, there.at, there.to]) expect(bruteDistance(path, place)).toBeLessThan(1e-6);
      expect(sharpestTurn(reversePath(path), 50).by).toBeCloseTo(there.by, 6);
    }),
    { numRuns: 300 },
  );
});
