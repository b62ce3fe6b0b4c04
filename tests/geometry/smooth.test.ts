import fc from 'fast-check';
import { expect, test } from 'vitest';
import { arcPath } from '../../src/geometry/arc.ts';
import { type Cubic, type Path, splitCubic, straight } from '../../src/geometry/cubic.ts';
import { lengthOf } from '../../src/geometry/length.ts';
import { joinPaths, polyline, reversePath } from '../../src/geometry/path.ts';
import { type Point, point } from '../../src/geometry/point.ts';
import { breaksOf, inflectionsOf, turnOf } from '../../src/geometry/smooth.ts';
import { pointAtStation } from '../../src/geometry/station.ts';
import { anyAngle, anyPath, anyPoint, cuspCubic, fraction, patternCubic } from './arbitrary.ts';
import { bezierOf, gap } from './oracle.ts';

const MANY = { numRuns: 2000 };

/** A zigzag that turns by the given angles. */
function zigzag(runs: readonly { run: number; turn: number }[]): Path {
  const points = [{ x: 0, y: 0 }];
  let way = 0.3;
  for (const { run, turn } of runs) {
    const last = points.at(-1) as Point;
    points.push({ x: last.x + run * Math.cos(way), y: last.y + run * Math.sin(way) });
    way += turn;
  }
  return polyline(points) as Path;
}

const legs = fc.array(
  fc.record({ run: fc.double({ min: 5, max: 200, noNaN: true }), turn: fc.double({ min: -3, max: 3, noNaN: true }) }),
  { minLength: 2, maxLength: 6 },
);

test('corners are found where they are, with their angle and side', () => {
  fc.assert(
    fc.property(legs, (runs) => {
      const found = breaksOf(zigzag(runs));
      const wanted: { station: number; turn: number }[] = [];
      let station = 0;
      for (const { run, turn } of runs.slice(0, -1)) {
        station += run;
        if (Math.abs(turn) > 2e-6) wanted.push({ station, turn });
      }
      fc.pre(runs.every(({ turn }) => Math.abs(turn) > 2e-6 || Math.abs(turn) < 5e-7));
      expect(found).toHaveLength(wanted.length);
      for (const [i, { station: s, turn }] of wanted.entries()) {
        expect(Math.abs((found[i]?.station ?? 0) - s)).toBeLessThan(1e-6);
        expect(Math.abs((found[i]?.angle ?? 0) - turn)).toBeLessThan(1e-6);
      }
    }),
    MANY,
  );
});

test('a curve cut anywhere has no corner there', () => {
  fc.assert(
    fc.property(patternCubic, fraction, (c, t) => {
      expect(breaksOf(splitCubic(c, t))).toEqual([]);
    }),
    MANY,
  );
});

test('a piece that is a point hides no corner', () => {
  const p = { x: 50, y: 0 };
  const path = [straight({ x: 0, y: 0 }, p), { p0: p, p1: p, p2: p, p3: p }, straight(p, { x: 50, y: 50 })];
  expect(breaksOf(path)).toEqual([{ station: 50, point: p, angle: Math.PI / 2 }]);
});

test('a handle of no length leaves toward the next control point', () => {
  const p = { x: 50, y: 0 };
  const bend: Cubic = { p0: p, p1: p, p2: { x: 90, y: 0 }, p3: { x: 90, y: 40 } };
  expect(breaksOf([straight({ x: 0, y: 0 }, p), bend])).toEqual([]);
});

test('the turn of an arc is its sweep, beyond a full circle too', () => {
  fc.assert(
    fc.property(
      anyPoint,
      fc.double({ min: 1, max: 500, noNaN: true }),
      anyAngle,
      fc.double({ min: -12, max: 12, noNaN: true }),
      (centre, r, from, sweep) => {
        fc.pre(Math.abs(sweep) > 1e-3);
        expect(Math.abs(turnOf(arcPath(centre, r, from, sweep)) - sweep)).toBeLessThan(1e-9);
      },
    ),
    { numRuns: 500 },
  );
});

test('the turn is the sum of small turns of the direction, loops included', () => {
  const general = fc.record({ p0: anyPoint, p1: anyPoint, p2: anyPoint, p3: anyPoint });
  fc.assert(
    fc.property(general, (c) => {
      const other = bezierOf(c);
      const ways = Array.from({ length: 2001 }, (_, i) => other.derivative(i / 2000));
      const steps = ways.slice(1).map((v, i) => {
        const u = ways[i] as Point;
        return Math.atan2(u.x * v.y - u.y * v.x, u.x * v.x + u.y * v.y);
      });
      // Near a cusp the direction turns too fast for samples.
      fc.pre(
        ways.every(({ x, y }) => Math.hypot(x, y) > 1e-6) &&
          steps.every((step) => Math.abs(step) < 0.5) &&
          Math.min(gap(c.p0, c.p1), gap(c.p2, c.p3)) > 1e-3,
      );
      expect(Math.abs(turnOf([c]) - steps.reduce((sum, step) => sum + step, 0))).toBeLessThan(1e-6);
    }),
    { numRuns: 500 },
  );
});

test('the turn, run backward, is the turn the other way', () => {
  fc.assert(
    fc.property(legs, patternCubic, (runs, c) => {
      expect(Math.abs(turnOf(zigzag(runs)) + turnOf(reversePath(zigzag(runs))))).toBeLessThan(1e-9);
      expect(Math.abs(turnOf([c]) + turnOf(reversePath([c])))).toBeLessThan(1e-9);
    }),
    MANY,
  );
});

test('a cusp turns half round, one way or the other, and the ends decide the rest', () => {
  fc.assert(
    fc.property(cuspCubic, (c) => {
      const [u, v] = [bezierOf(c).derivative(0), bezierOf(c).derivative(1)];
      fc.pre(Math.hypot(u.x, u.y) > 1 && Math.hypot(v.x, v.y) > 1);
      const ends = Math.atan2(u.x * v.y - u.y * v.x, u.x * v.x + u.y * v.y);
      const off = (turnOf([c]) - ends) / (2 * Math.PI);
      expect(Math.abs(off - Math.round(off))).toBeLessThan(1e-5);
    }),
    MANY,
  );
});

test('the graph of a cubic has one inflection, where its second derivative vanishes', () => {
  const steep = fc.double({ min: 1e-5, max: 1e-3, noNaN: true }).chain((k) => fc.constantFrom(k, -k));
  fc.assert(
    fc.property(steep, fc.double({ min: -90, max: 90, noNaN: true }), (k, at) => {
      // y = k (x - at)^3 from -100 to 100, by blossoming.
      const y = (p: number, q: number, r: number) => k * (p - at) * (q - at) * (r - at);
      const c: Cubic = {
        p0: { x: -100, y: y(-100, -100, -100) },
        p1: { x: -100 / 3, y: y(-100, -100, 100) },
        p2: { x: 100 / 3, y: y(-100, 100, 100) },
        p3: { x: 100, y: y(100, 100, 100) },
      };
      const found = inflectionsOf([c]);
      expect(found).toHaveLength(1);
      expect(Math.abs((pointAtStation([c], found[0] as number)?.x ?? 999) - at)).toBeLessThan(1e-6);
    }),
    MANY,
  );
});

test('inflections of pattern curves are those of bezier-js', () => {
  fc.assert(
    fc.property(patternCubic, (c) => {
      const theirs = bezierOf(c)
        .inflections()
        .filter((t) => t > 1e-3 && t < 1 - 1e-3);
      const ours = inflectionsOf([c]);
      // A bend of next to nothing before an inflection counts as straight.
      fc.pre(theirs.every((t) => [c, ...splitCubic(c, t)].every((part) => Math.abs(turnOf([part])) > 1e-3)));
      for (const t of theirs) {
        const p = bezierOf(c).get(t);
        expect(Math.min(...ours.map((s) => gap(pointAtStation([c], s) as Point, p)))).toBeLessThan(1e-3);
      }
    }),
    { numRuns: 1000 },
  );
});

test('two bows that face opposite ways have one inflection where they meet, or after the straight run between', () => {
  const left = arcPath({ x: 0, y: 100 }, 100, -Math.PI / 2, 1);
  const turn = left.at(-1) as Cubic;
  const out = { x: Math.cos(1), y: Math.sin(1) };
  const far = { x: turn.p3.x + 40 * out.x, y: turn.p3.y + 40 * out.y };
  const rightFrom = (p: Point) => arcPath({ x: p.x + 80 * out.y, y: p.y - 80 * out.x }, 80, Math.PI / 2 + 1, -1);
  expect(inflectionsOf(joinPaths([left, rightFrom(turn.p3)]) as Path)).toEqual([expect.closeTo(100, 6)]);
  expect(inflectionsOf(joinPaths([left, [straight(turn.p3, far)], rightFrom(far)]) as Path)).toEqual([
    expect.closeTo(140, 6),
  ]);
});

test('arcs, straight runs and zigzags have no inflection', () => {
  expect(inflectionsOf(arcPath({ x: 0, y: 0 }, 100, 0, 5))).toEqual([]);
  expect(
    inflectionsOf(
      zigzag([
        { run: 50, turn: 1 },
        { run: 50, turn: -1 },
        { run: 50, turn: 0 },
      ]),
    ),
  ).toEqual([]);
});

test('every station given lies on the path', () => {
  fc.assert(
    fc.property(anyPath, (path) => {
      const whole = lengthOf(path);
      for (const s of [...inflectionsOf(path), ...breaksOf(path).map(({ station }) => station)]) {
        expect(s).toBeGreaterThanOrEqual(0);
        expect(s).toBeLessThanOrEqual(whole + 1e-6);
      }
    }),
    MANY,
  );
});

test('at a cusp the direction jumps by half a turn, anticlockwise, between what it turns before and after', () => {
  // Handles crossed so that the speed is nothing at the middle: in at 90 degrees, out at -90.
  const cusp: Cubic = { p0: point(0, 0), p1: point(100, 100), p2: point(0, 100), p3: point(100, 0) };
  expect(turnOf([cusp])).toBeCloseTo(Math.PI / 4 + Math.PI + Math.PI / 4, 9);
});
