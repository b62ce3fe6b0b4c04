import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Cubic } from '../../src/geometry/cubic.ts';
import { add, type Point, scale } from '../../src/geometry/point.ts';
import { standstills } from '../../src/geometry/standstill.ts';

/** The piece whose derivative is (t - still) (a + b t): it stands still there, integrated by hand. */
function standingAt(still: number, a: Point, b: Point): Cubic {
  const [x1, x2, x3] = [scale(a, -still), scale(add(a, scale(b, -still)), 1 / 2), scale(b, 1 / 3)];
  const p0 = { x: 12, y: -7 };
  return {
    p0,
    p1: add(p0, scale(x1, 1 / 3)),
    p2: add(p0, add(scale(x1, 2 / 3), scale(x2, 1 / 3))),
    p3: add(p0, add(x1, add(x2, x3))),
  };
}

const along = fc.record({ x: fc.integer({ min: -300, max: 300 }), y: fc.integer({ min: -300, max: 300 }) });

test('a piece stands still at its cusp, wherever that lies, and nowhere else', () => {
  fc.assert(
    fc.property(fc.integer({ min: 5, max: 95 }), along, along, (percent, a, b) => {
      const still = percent / 100;
      // Two places where it stands still would be a piece that runs to and fro on a line.
      fc.pre(Math.abs(a.x * b.y - a.y * b.x) > 1000 && Math.hypot(a.x + b.x * still, a.y + b.y * still) > 20);
      const found = standstills(standingAt(still, a, b));
      expect(found).toHaveLength(1);
      expect(found[0]).toBeCloseTo(still, 6);
    }),
  );
});

test('a piece that turns straight back stands still at each turn', () => {
  // Its derivative is (t - 0.3) (t - 0.8), along one direction.
  const found = standstills(standingAt(0.3, { x: -80, y: -160 }, { x: 100, y: 200 }));
  expect(found.map((t) => t.toFixed(6))).toEqual(['0.300000', '0.800000']);
});

test('a piece that only bends stands still nowhere', () => {
  expect(standstills({ p0: { x: 0, y: 0 }, p1: { x: 30, y: 0 }, p2: { x: 60, y: 30 }, p3: { x: 60, y: 90 } })).toEqual(
    [],
  );
});
