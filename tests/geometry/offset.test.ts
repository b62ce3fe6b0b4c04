import fc from 'fast-check';
import { expect, test } from 'vitest';
import { arcPath } from '../../src/geometry/arc.ts';
import { type Cubic, type Path, straight } from '../../src/geometry/cubic.ts';
import { lengthOf } from '../../src/geometry/length.ts';
import { offsetPath } from '../../src/geometry/offset.ts';
import { endOf, joinPaths, polyline, reversePath, startOf } from '../../src/geometry/path.ts';
import { type Point, point } from '../../src/geometry/point.ts';
import { breaksOf, turnOf } from '../../src/geometry/smooth.ts';
import { anyAngle, anyPath, anyPoint, degenerateCubic, parabola, patternCubic } from './arbitrary.ts';
import { bezierOf, bruteDistance, gap, samples, secondOf } from './oracle.ts';

const distance = fc.double({ min: 0.5, max: 60, noNaN: true }).chain((d) => fc.constantFrom(d, -d));
const parallel = (path: Path, d: number) => offsetPath(path, d) as Path;

/** The tightest radius to the left of a piece hollow that way, by bezier-js. */
function tightest(c: Cubic, d: number): number {
  const other = bezierOf(c);
  const bends = Array.from({ length: 201 }, (_, i) => {
    const [u, v] = [other.derivative(i / 200), secondOf(other, i / 200)];
    return (Math.sign(d) * (u.x * v.y - u.y * v.x)) / Math.hypot(u.x, u.y) ** 3;
  });
  return 1 / Math.max(1e-9, ...bends);
}

/** The angle a piece turns through, summed over samples of its direction by bezier-js. */
function turned(c: Cubic): number {
  const other = bezierOf(c);
  const ways = Array.from({ length: 401 }, (_, i) => other.derivative(i / 400));
  return ways.slice(1).reduce((sum, v, i) => {
    const u = ways[i] as Point;
    return sum + Math.atan2(u.x * v.y - u.y * v.x, u.x * v.x + u.y * v.y);
  }, 0);
}

test('a parallel of a pattern curve keeps its distance everywhere and is as long as Steiner says', () => {
  fc.assert(
    fc.property(patternCubic, distance, (c, d) => {
      fc.pre(tightest(c, d) > Math.abs(d) * 1.05);
      const made = parallel([c], d);
      expect(Math.abs(lengthOf(made) - (lengthOf([c]) - d * turned(c)))).toBeLessThan(1e-6);
      for (const p of samples(made, 4)) expect(bruteDistance([c], p)).toBeLessThan(Math.abs(d) + 1e-6);
      for (const p of samples(made, 4)) expect(strayed([c], p, d)).toBeLessThan(1e-6);
    }),
    { numRuns: 400 },
  );
});

/** How far a point is from keeping the distance `d`, squarely: zero where the nearest points at the ends are not square. */
function strayed(path: Path, p: Point, d: number): number {
  return Math.max(0, Math.abs(d) - bruteDistance(path, p)) > 0.01 ? 0 : Math.abs(Math.abs(d) - bruteDistance(path, p));
}

test('a parallel starts and ends square to the ends, and runs on smoothly', () => {
  fc.assert(
    fc.property(patternCubic, distance, (c, d) => {
      fc.pre(tightest(c, d) > Math.abs(d) * 1.05);
      const made = parallel([c], d);
      const other = bezierOf(c);
      for (const [end, t] of [
        [startOf(made), 0],
        [endOf(made), 1],
      ] as const) {
        const normal = other.normal(t);
        const at = other.get(t);
        expect(gap(end, { x: at.x + d * normal.x, y: at.y + d * normal.y })).toBeLessThan(1e-7);
      }
      expect(breaksOf(made)).toEqual([]);
      expect(Math.abs(turnOf(made) - turned(c))).toBeLessThan(1e-6);
    }),
    { numRuns: 1000 },
  );
});

test('the parallel of a circle is a circle, on either side, until nothing is left', () => {
  fc.assert(
    fc.property(anyPoint, fc.double({ min: 5, max: 500, noNaN: true }), anyAngle, distance, (centre, r, from, d) => {
      fc.pre(Math.abs(r - d) > 0.01);
      const made = offsetPath(arcPath(centre, r, from, 1.8), d);
      if (d > r) {
        expect(made).toBeNull();
        return;
      }
      expect(Math.abs(lengthOf(made as Path) - (r - d) * 1.8)).toBeLessThan(1e-6);
      for (const p of samples(made as Path, 6)) expect(Math.abs(gap(p, centre) - (r - d))).toBeLessThan(2e-7);
    }),
    { numRuns: 500 },
  );
});

test('the outer parallel of a parabola has the length of its closed form', () => {
  fc.assert(
    fc.property(parabola, fc.double({ min: 1, max: 60, noNaN: true }), ({ q0, q1, q2, cubic }, off) => {
      const [u, v] = [
        { x: q1.x - q0.x, y: q1.y - q0.y },
        { x: q2.x - q1.x, y: q2.y - q1.y },
      ];
      const bend = u.x * v.y - u.y * v.x;
      fc.pre(Math.abs(bend) > 1 && Math.hypot(u.x, u.y) > 1 && Math.hypot(v.x, v.y) > 1);
      const angle = Math.abs(Math.atan2(bend, u.x * v.x + u.y * v.y));
      const made = parallel([cubic], -Math.sign(bend) * off);
      expect(Math.abs(lengthOf(made) - (lengthOf([cubic]) + off * angle))).toBeLessThan(1e-6);
    }),
    { numRuns: 500 },
  );
});

test('round the outside of corners the length gains the distance times the turn; inside it loses two tangents a corner', () => {
  const corner = fc.record({
    run: fc.double({ min: 150, max: 300, noNaN: true }),
    turn: fc.double({ min: 0.05, max: 1.5, noNaN: true }),
  });
  fc.assert(
    fc.property(
      fc.array(corner, { minLength: 1, maxLength: 2 }),
      fc.double({ min: 1, max: 50, noNaN: true }),
      (corners, d) => {
        const points = [{ x: 0, y: 0 }];
        let way = 0;
        for (const { run, turn } of [...corners, { run: 200, turn: 0 }]) {
          const last = points.at(-1) as Point;
          points.push({ x: last.x + run * Math.cos(way), y: last.y + run * Math.sin(way) });
          way += turn;
        }
        const path = polyline(points) as Path;
        const turns = corners.map(({ turn }) => turn);
        const outer = lengthOf(path) + d * turns.reduce((sum, turn) => sum + turn, 0);
        const inner = lengthOf(path) - 2 * d * turns.reduce((sum, turn) => sum + Math.tan(turn / 2), 0);
        expect(Math.abs(lengthOf(parallel(path, -d)) - outer)).toBeLessThan(1e-6);
        expect(Math.abs(lengthOf(parallel(path, d)) - inner)).toBeLessThan(1e-6);
        expect(parallel(path, d)).toHaveLength(path.length);
      },
    ),
    { numRuns: 1000 },
  );
});

test('curves joined at corners: every point of the parallel keeps its distance, inside and out', () => {
  fc.assert(
    fc.property(patternCubic, patternCubic, distance, (a, b, d) => {
      const shift = (p: Point) => ({ x: p.x + a.p3.x - b.p0.x, y: p.y + a.p3.y - b.p0.y });
      const path = [a, { p0: a.p3, p1: shift(b.p1), p2: shift(b.p2), p3: shift(b.p3) }];
      const made = offsetPath(path, d);
      if (made === null) return;
      const points = samples(made, 3);
      for (const p of points) expect(bruteDistance(path, p)).toBeLessThan(Math.abs(d) + 1e-5);
      expect(made.every((c, i) => i === 0 || gap((made[i - 1] as Cubic).p3, c.p0) === 0)).toBe(true);
    }),
    { numRuns: 300 },
  );
});

test('the parallel of a path run backward, on the other side, is the same one run backward', () => {
  fc.assert(
    fc.property(patternCubic, distance, (c, d) => {
      fc.pre(tightest(c, d) > Math.abs(d) * 1.05);
      const [made, back] = [parallel([c], d), parallel(reversePath([c]), -d)];
      expect(Math.abs(lengthOf(made) - lengthOf(back))).toBeLessThan(1e-6);
      expect(gap(startOf(made), endOf(back))).toBeLessThan(1e-7);
    }),
    { numRuns: 500 },
  );
});

test('a hollow tighter than the distance is cut where the parallel crosses itself, and keeps its distance', () => {
  // A hairpin: two legs 80 mm apart, joined by a half circle of 40; inside at 30 it fits, at 50 nothing is left but the legs apart.
  const legs = (r: number) =>
    joinPaths([
      [straight({ x: 200, y: -r }, { x: 0, y: -r })],
      arcPath({ x: 0, y: 0 }, r, -Math.PI / 2, -Math.PI),
      [straight({ x: 0, y: r }, { x: 200, y: r })],
    ]) as Path;
  expect(Math.abs(lengthOf(parallel(legs(40), -30)) - (400 + Math.PI * 10))).toBeLessThan(1e-6);
  expect(Math.abs(lengthOf(parallel(legs(40), 30)) - (400 + Math.PI * 70))).toBeLessThan(1e-6);
  expect(offsetPath(legs(40), -50)).toBeNull();
  // A bowl with steep sides: y = x^2 / 20 has a radius of 10 at its foot.
  const bowl: Cubic = {
    p0: { x: -60, y: 180 },
    p1: { x: -20, y: -60 },
    p2: { x: 20, y: -60 },
    p3: { x: 60, y: 180 },
  };
  const inside = parallel([bowl], 25);
  for (const p of samples(inside, 8)) {
    expect(bruteDistance([bowl], p)).toBeGreaterThan(25 - 1e-6);
    expect(bruteDistance([bowl], p)).toBeLessThan(25 + 1e-6);
  }
  expect(breaksOf(inside)).toHaveLength(1);
  expect(Math.abs(breaksOf(inside)[0]?.point.x ?? 1)).toBeLessThan(1e-6);
});

test('nothing throws, whatever is asked: cusps, loops, points, doubling back', () => {
  fc.assert(
    fc.property(
      fc.oneof(
        anyPath,
        degenerateCubic.map((c) => [c]),
      ),
      distance,
      (path, d) => {
        const made = offsetPath(path, d);
        if (made === null) return;
        expect(made.length).toBeGreaterThan(0);
        expect(Number.isFinite(lengthOf(made))).toBe(true);
        const points = samples(made, 2);
        const step = Math.ceil(points.length / 20);
        for (let i = 0; i < points.length; i += step) {
          expect(bruteDistance(path, points[i] as Point)).toBeLessThan(Math.abs(d) + 1e-3);
        }
      },
    ),
    { numRuns: 400 },
  );
});

test('at no distance the parallel is the path; at no number, or of a point, there is none', () => {
  const path = [straight({ x: 0, y: 0 }, { x: 10, y: 0 })];
  expect(offsetPath(path, 0)).toEqual(path);
  expect(offsetPath(path, Number.NaN)).toBeNull();
  expect(offsetPath(path, Number.POSITIVE_INFINITY)).toBeNull();
  const p = { x: 1, y: 1 };
  expect(offsetPath([{ p0: p, p1: p, p2: p, p3: p }], 5)).toBeNull();
});

test('a straight run has a straight parallel, to the left when positive', () => {
  expect(offsetPath([straight({ x: 0, y: 0 }, { x: 30, y: 0 })], 5)).toEqual([
    straight({ x: 0, y: 5 }, { x: 30, y: 5 }),
  ]);
});

test('a spike is rounded on both sides', () => {
  const spike = polyline([
    { x: 0, y: 0 },
    { x: 50, y: 0 },
    { x: 0, y: 0 },
  ]) as Path;
  for (const d of [5, -5]) expect(Math.abs(lengthOf(parallel(spike, d)) - (100 + 5 * Math.PI))).toBeLessThan(1e-6);
});

test('where a corner comes nearer than the distance to the parallel of another stretch, that is cut about the corner', () => {
  // The corner at (50, 30) stands over the first stretch, square to none of its own sides there: only the corner is near.
  const path = polyline([point(0, 0), point(100, 0), point(100, 75), point(50, 30), point(0, 75)]) as Path;
  const made = offsetPath(path, 20) as Path;
  const corner = point(50, 30);
  expect(Math.min(...samples(made, 200).map((p) => gap(p, corner)))).toBeGreaterThan(20 - 1e-6);
});

test('of pieces that are left apart the longest is given', () => {
  // Two rooms, 100 by 100 and 40 by 60, and a way of 20 between them, too narrow for the parallel.
  const corners = '0 0, 100 0, 100 40, 160 40, 160 20, 200 20, 200 80, 160 80, 160 60, 100 60, 100 100, 0 100, 0 1';
  const points = corners.split(', ').map((pair): Point => {
    const [x = 0, y = 0] = pair.split(' ').map(Number);
    return point(x, y);
  });
  const made = offsetPath(polyline(points) as Path, 15) as Path;
  // The arcs about the two corners of the way meet half way between them.
  const meeting = point(100 - Math.sqrt(15 ** 2 - 10 ** 2), 50);
  const xs = samples(made, 10).map(({ x }) => x);
  expect([Math.min(...xs), Math.max(...xs)]).toEqual([expect.closeTo(15, 6), expect.closeTo(meeting.x, 6)]);
});
