import fc from 'fast-check';
import { expect, test } from 'vitest';
import { arcPath } from '../../src/geometry/arc.ts';
import {
  crossCircleWithLine,
  crossCircleWithPath,
  crossLineWithPath,
  crossPaths,
} from '../../src/geometry/crossings.ts';
import { type Cubic, type Path, straight } from '../../src/geometry/cubic.ts';
import { type Line, signedDistance } from '../../src/geometry/line.ts';
import { polyline, reversePath } from '../../src/geometry/path.ts';
import type { Point } from '../../src/geometry/point.ts';
import { anyAngle, anyCubic, anyLine, anyPath, anyPoint, parabola, patternCubic } from './arbitrary.ts';
import { bezierOf, bruteDistance, casteljau, gap, samples } from './oracle.ts';

const radius = fc.double({ min: 1, max: 500, noNaN: true });

test('every crossing of a line and a path lies on both, and each is given once', () => {
  fc.assert(
    fc.property(anyLine, anyPath, (line, path) => {
      const points = crossLineWithPath(line, path);
      for (const p of points) {
        expect(Math.abs(signedDistance(line, p))).toBeLessThan(2e-7);
        expect(bruteDistance(path, p)).toBeLessThan(1e-6);
      }
      expect(points.length).toBeLessThanOrEqual(3 * path.length);
    }),
    { numRuns: 500 },
  );
});

test('wherever samples of a path change sides of a line a crossing is given', () => {
  fc.assert(
    fc.property(anyLine, anyPath, (line, path) => {
      const points = crossLineWithPath(line, path);
      const row = samples(path, 100);
      for (const [i, p] of row.entries()) {
        const next = row[i + 1] ?? p;
        const [a, b] = [signedDistance(line, p), signedDistance(line, next)];
        if (!(Math.min(Math.abs(a), Math.abs(b)) > 1e-6 && a * b < 0)) continue;
        expect(points.some((q) => gap(q, p) < 3 * gap(p, next) + 100)).toBe(true);
      }
    }),
    { numRuns: 2000 },
  );
});

test('a curve with its ends on either side of a line crosses it an odd number of times', () => {
  fc.assert(
    fc.property(anyLine, patternCubic, (line, c) => {
      const [start, end] = [signedDistance(line, c.p0), signedDistance(line, c.p3)];
      fc.pre(!touches(line, [c]) && Math.min(Math.abs(start), Math.abs(end)) > 1e-6);
      expect(crossLineWithPath(line, [c]).length % 2 === 1).toBe(start * end < 0);
    }),
    { numRuns: 2000 },
  );
});

/** Whether the path comes within a hair of the line without crossing it, or runs along it: then no count is certain. */
function touches(line: Line, path: Path): boolean {
  const row = samples(path, 400).map((p) => signedDistance(line, p));
  return row.some((off, i) => {
    const [before, after] = [row[i - 1] ?? off, row[i + 1] ?? off];
    const turns = Math.abs(off) <= Math.abs(before) && Math.abs(off) <= Math.abs(after) && before * after > 0;
    return turns && Math.abs(off) < 1;
  });
}

test('a line crosses a parabola where the quadratic formula says', () => {
  fc.assert(
    fc.property(parabola, anyLine, ({ q0, q1, q2, cubic }, line) => {
      const [a, b, c] = [q0, q1, q2].map((p) => signedDistance(line, p)) as [number, number, number];
      const [A, B] = [a - 2 * b + c, 2 * (b - a)];
      const discriminant = B * B - 4 * A * a;
      fc.pre(Math.abs(A) > 1e-3 && discriminant > 1);
      const roots = [(-B - Math.sqrt(discriminant)) / (2 * A), (-B + Math.sqrt(discriminant)) / (2 * A)];
      fc.pre(roots.every((t) => Math.abs(t) > 1e-6 && Math.abs(t - 1) > 1e-6));
      const wanted = roots.filter((t) => t > 0 && t < 1).map((t) => casteljau(cubic, t));
      // A parabola folded flat may meet the line twice in one point.
      fc.pre(!(wanted[0] && wanted[1] && gap(wanted[0], wanted[1]) < 1e-3));
      const found = crossLineWithPath(line, [cubic]);
      expect(found).toHaveLength(wanted.length);
      for (const p of wanted) expect(Math.min(...found.map((q) => gap(p, q)))).toBeLessThan(1e-6);
    }),
    { numRuns: 3000 },
  );
});

test('a line crosses a circle where Pythagoras says', () => {
  fc.assert(
    fc.property(anyPoint, radius, anyLine, (centre, r, line) => {
      const off = Math.abs(signedDistance(line, centre));
      fc.pre(Math.abs(off - r) > 1e-3);
      const exact = crossCircleWithLine(centre, r, line);
      const drawn = crossLineWithPath(line, arcPath(centre, r, 0.1, 2 * Math.PI));
      expect(exact).toHaveLength(off < r ? 2 : 0);
      expect(drawn).toHaveLength(exact.length);
      for (const p of exact) {
        expect(Math.abs(gap(p, centre) - r)).toBeLessThan(1e-9);
        expect(Math.abs(signedDistance(line, p))).toBeLessThan(1e-9);
        // Where the line nearly touches, a hair's breadth of the circle moves the crossing far along it.
        const steep = Math.sqrt(1 - (off / r) ** 2);
        expect(Math.min(...drawn.map((q) => gap(p, q)))).toBeLessThan(1e-6 + 1e-7 / steep);
      }
    }),
    { numRuns: 1000 },
  );
});

test('a line that touches a circle meets it once, and one beside it by 1e-6 mm does not', () => {
  fc.assert(
    fc.property(anyPoint, radius, anyAngle, (centre, r, angle) => {
      const out = { x: Math.cos(angle), y: Math.sin(angle) };
      const tangent = (d: number): Line => ({
        through: { x: centre.x + (r + d) * out.x, y: centre.y + (r + d) * out.y },
        direction: { x: -out.y, y: out.x },
      });
      expect(crossCircleWithLine(centre, r, tangent(0))).toHaveLength(1);
      expect(crossCircleWithLine(centre, r, tangent(1e-6))).toHaveLength(0);
      const circle = arcPath(centre, r, angle - 1, 2);
      expect(crossLineWithPath(tangent(0), circle)).toHaveLength(1);
      expect(crossLineWithPath(tangent(1e-6), circle)).toHaveLength(0);
    }),
    { numRuns: 1000 },
  );
});

test('a circle cuts a path only at its radius, and between every two samples on either side of it', () => {
  fc.assert(
    fc.property(anyPoint, radius, anyPath, (centre, r, path) => {
      const points = crossCircleWithPath(centre, r, path);
      for (const p of points) {
        expect(Math.abs(gap(p, centre) - r)).toBeLessThan(1e-6);
        expect(bruteDistance(path, p)).toBeLessThan(1e-6);
      }
      const row = samples(path, 100);
      for (const [i, p] of row.entries()) {
        const next = row[i + 1] ?? p;
        const [a, b] = [gap(p, centre) - r, gap(next, centre) - r];
        if (!(Math.min(Math.abs(a), Math.abs(b)) > 1e-6 && a * b < 0)) continue;
        expect(points.some((q) => gap(q, p) < 3 * gap(p, next) + 50)).toBe(true);
      }
    }),
    { numRuns: 500 },
  );
});

test('a circle cuts a straight run as it cuts its line, within its ends', () => {
  fc.assert(
    fc.property(anyPoint, radius, anyPoint, anyPoint, (centre, r, a, b) => {
      fc.pre(gap(a, b) > 1);
      const run = polyline([a, b]) as Path;
      const direction = { x: (b.x - a.x) / gap(a, b), y: (b.y - a.y) / gap(a, b) };
      const all = crossCircleWithLine(centre, r, { through: a, direction });
      // Where the line barely touches, a hair's breadth moves the crossing far along it; touching has its own test.
      fc.pre(Math.abs(Math.abs(signedDistance({ through: a, direction }, centre)) - r) > 1e-3 * r);
      fc.pre([a, b].every((p) => Math.abs(gap(p, centre) - r) > 1e-4));
      const along = (p: Point) => (p.x - a.x) * direction.x + (p.y - a.y) * direction.y;
      const wanted = all.filter((p) => along(p) > 0 && along(p) < gap(a, b));
      const found = crossCircleWithPath(centre, r, run);
      expect(found).toHaveLength(wanted.length);
      for (const [i, p] of wanted.entries()) expect(gap(p, found[i] as Point)).toBeLessThan(1e-6);
    }),
    { numRuns: 2000 },
  );
});

test('a circle of no radius meets a path only at its centre; a negative one meets nothing', () => {
  const run = [straight({ x: -10, y: 0 }, { x: 10, y: 0 })];
  expect(crossCircleWithPath({ x: 0, y: 0 }, 0, run).length).toBeLessThanOrEqual(1);
  expect(crossCircleWithPath({ x: 0, y: 0 }, -1, run)).toEqual([]);
  expect(crossCircleWithLine({ x: 0, y: 0 }, -1, { through: { x: 0, y: 0 }, direction: { x: 1, y: 0 } })).toEqual([]);
  expect(crossCircleWithPath({ x: 0, y: 0 }, Number.NaN, run)).toEqual([]);
});

test('two circles cross where their radical line says', () => {
  fc.assert(
    fc.property(anyPoint, radius, anyPoint, radius, (a, r, b, s) => {
      const d = gap(a, b);
      fc.pre(d > 1 && Math.abs(d - r - s) > 0.01 && Math.abs(d - Math.abs(r - s)) > 0.01);
      const found = crossPaths(arcPath(a, r, 0.2, 2 * Math.PI), arcPath(b, s, 0.7, 2 * Math.PI));
      const crosses = d < r + s && d > Math.abs(r - s);
      expect(found).toHaveLength(crosses ? 2 : 0);
      for (const p of found) {
        // Along the line of centres: (d^2 + r^2 - s^2) / 2d.
        const along = ((p.x - a.x) * (b.x - a.x) + (p.y - a.y) * (b.y - a.y)) / d;
        expect(Math.abs(along - (d * d + r * r - s * s) / (2 * d))).toBeLessThan(1e-6 * Math.max(1, (2 * (r + s)) / d));
        expect(Math.abs(gap(p, a) - r)).toBeLessThan(1e-6);
      }
    }),
    { numRuns: 500 },
  );
});

test('circles that touch, outside or inside, meet once where the line of centres says', () => {
  fc.assert(
    fc.property(anyPoint, radius, radius, anyAngle, fc.boolean(), (a, r, s, angle, outside) => {
      fc.pre(Math.abs(r - s) > 0.1 * Math.max(r, s));
      const d = outside ? r + s : r - s;
      const out = { x: Math.cos(angle), y: Math.sin(angle) };
      const b = { x: a.x + d * out.x, y: a.y + d * out.y };
      const touch = { x: a.x + r * out.x, y: a.y + r * out.y };
      const way = outside ? angle + Math.PI : angle;
      const found = crossPaths(arcPath(a, r, angle - 1, 2.2), arcPath(b, s, way - 1, 2.3));
      expect(found).toHaveLength(1);
      // Drawn arcs are right to 1e-7 mm; across that the touch may slide by the square root of it times the radii.
      expect(gap(found[0] as Point, touch)).toBeLessThan(Math.sqrt((8e-7 * r * s) / Math.abs(d)) + 1e-6);
    }),
    { numRuns: 500 },
  );
});

test('every crossing of two paths lies on both', () => {
  fc.assert(
    fc.property(anyPath, anyPath, (a, b) => {
      for (const p of crossPaths(a, b)) {
        expect(bruteDistance(a, p)).toBeLessThan(1e-6);
        expect(bruteDistance(b, p)).toBeLessThan(1e-6);
      }
    }),
    { numRuns: 200 },
  );
});

test('no crossing that chords of two curves show plainly is missed, and none is given twice', () => {
  fc.assert(
    fc.property(fc.oneof(anyCubic, patternCubic), fc.oneof(anyCubic, patternCubic), (a, b) => {
      const found = crossPaths([a], [b]);
      for (const p of chordCrossings(a, b)) {
        expect(Math.min(...found.map((q) => gap(p.point, q)))).toBeLessThan(p.slack);
      }
      for (const [i, p] of found.entries()) {
        for (const q of found.slice(i + 1)) expect(gap(p, q)).toBeGreaterThan(1e-7);
      }
    }),
    { numRuns: 1000 },
  );
});

interface Chord {
  readonly from: Point;
  readonly to: Point;
  readonly length: number;
  /** How far the curve stands off the chord in its middle. */
  readonly bow: number;
}

function chords(c: Cubic, count: number): Chord[] {
  const row = samples([c], count);
  return row.slice(1).map((to, i) => {
    const from = row[i] as Point;
    return { from, to, length: gap(from, to), bow: gap(casteljau(c, (i + 0.5) / count), mid(from, to)) };
  });
}

/** Crossings of chords between samples, where they meet at more than 6 degrees well within both. */
function chordCrossings(a: Cubic, b: Cubic): { point: Point; slack: number }[] {
  const others = chords(b, 120);
  return chords(a, 120).flatMap((one) => others.flatMap((other) => chordCrossing(one, other) ?? []));
}

function chordCrossing(one: Chord, other: Chord): { point: Point; slack: number } | null {
  const [p, q] = [one.from, other.from];
  const [ux, uy, vx, vy] = [one.to.x - p.x, one.to.y - p.y, other.to.x - q.x, other.to.y - q.y];
  const turn = ux * vy - uy * vx;
  if (!(Math.abs(turn) > 0.1 * one.length * other.length)) return null;
  const s = ((q.x - p.x) * vy - (q.y - p.y) * vx) / turn;
  const t = ((q.x - p.x) * uy - (q.y - p.y) * ux) / turn;
  // The curves must be nearly their chords there, or their crossing may not exist.
  const bows = one.bow + other.bow;
  const plain = Math.min(s, t) > 0.2 && Math.max(s, t) < 0.8 && bows < 0.01 * Math.min(one.length, other.length);
  return plain ? { point: { x: p.x + s * ux, y: p.y + s * uy }, slack: 1e-6 + 40 * bows } : null;
}

function mid(p: Point, q: Point): Point {
  return { x: (p.x + q.x) / 2, y: (p.y + q.y) / 2 };
}

test('curves crossed in either order, or run backward, cross at the same points', () => {
  fc.assert(
    fc.property(patternCubic, patternCubic, (a, b) => {
      const found = crossPaths([a], [b]);
      for (const other of [crossPaths([b], [a]), crossPaths(reversePath([a]), [b])]) {
        const steep = Math.min(...found.map((p) => steepness(a, b, p)), ...other.map((p) => steepness(a, b, p)));
        // Nearly parallel, they touch or run along each other within the tolerance, and may be taken either way.
        fc.pre(steep > 1e-5);
        if (steep > 1e-3) expect(other).toHaveLength(found.length);
        for (const p of found) expect(Math.min(...other.map((q) => gap(p, q)))).toBeLessThan(1e-7 / steep);
      }
    }),
    { numRuns: 2000 },
  );
});

/** The sine of the angle between two curves at a place on both. */
function steepness(a: Cubic, b: Cubic, p: Point): number {
  const [u, v] = [a, b].map((c) => {
    const other = bezierOf(c);
    return other.derivative(other.project(p).t ?? 0);
  }) as [Point, Point];
  return Math.abs(u.x * v.y - u.y * v.x) / (Math.hypot(u.x, u.y) * Math.hypot(v.x, v.y));
}

test('what bezier-js finds of pattern curves is found', () => {
  fc.assert(
    fc.property(patternCubic, patternCubic, (a, b) => {
      const found = crossPaths([a], [b]);
      for (const pair of bezierOf(a).intersects(bezierOf(b), 0.01)) {
        const [t = 0, u = 0] = String(pair).split('/').map(Number);
        // It gives places where boxes of a hundredth meet: what is no crossing, bettered, was a near miss.
        const p = bettered(a, b, t, u);
        if (p) expect(Math.min(...found.map((q) => gap(p, q)))).toBeLessThan(1e-6);
      }
    }),
    { numRuns: 1000 },
  );
});

/** The crossing of two curves near two places on them, by Newton's method; null where it leads to none well within both. */
function bettered(a: Cubic, b: Cubic, t: number, u: number): Point | null {
  const [one, other] = [bezierOf(a), bezierOf(b)];
  let [at, on] = [t, u];
  for (let i = 0; i < 30; i++) {
    const [p, q, v, w] = [casteljau(a, at), casteljau(b, on), one.derivative(at), other.derivative(on)];
    const turn = v.x * w.y - v.y * w.x;
    // Along each other there is no one place.
    if (Math.abs(turn) < 0.01 * Math.hypot(v.x, v.y) * Math.hypot(w.x, w.y)) return null;
    const [dx, dy] = [q.x - p.x, q.y - p.y];
    at += (dx * w.y - dy * w.x) / turn;
    on += (dx * v.y - dy * v.x) / turn;
    if (!(Math.min(at, on) > 1e-6 && Math.max(at, on) < 1 - 1e-6)) return null;
  }
  const p = casteljau(a, at);
  return gap(p, casteljau(b, on)) < 1e-9 ? p : null;
}

test('a crossing at a join is given once', () => {
  const bent = polyline([
    { x: 0, y: 0 },
    { x: 50, y: 50 },
    { x: 100, y: 0 },
  ]) as Path;
  expect(crossLineWithPath({ through: { x: 50, y: 0 }, direction: { x: 0, y: 1 } }, bent)).toEqual([{ x: 50, y: 50 }]);
  expect(crossLineWithPath({ through: { x: 0, y: 50 }, direction: { x: 1, y: 0 } }, bent)).toEqual([{ x: 50, y: 50 }]);
  expect(
    crossPaths(
      bent,
      polyline([
        { x: 50, y: 0 },
        { x: 50, y: 50 },
        { x: 50, y: 90 },
      ]) as Path,
    ),
  ).toHaveLength(1);
  expect(crossCircleWithPath({ x: 50, y: 0 }, 50, bent)).toHaveLength(3);
});

test('a closed path met where it closes is met once', () => {
  const square = polyline([
    { x: 0, y: 0 },
    { x: 50, y: 0 },
    { x: 50, y: 50 },
    { x: 0, y: 50 },
    { x: 0, y: 0 },
  ]) as Path;
  const diagonal = { through: { x: 0, y: 0 }, direction: { x: Math.SQRT1_2, y: Math.SQRT1_2 } };
  expect(crossLineWithPath(diagonal, square)).toHaveLength(2);
});

test('paths that meet end to end, or end on each other, meet there', () => {
  const run = polyline([
    { x: 0, y: 0 },
    { x: 50, y: 0 },
  ]) as Path;
  expect(
    crossPaths(
      run,
      polyline([
        { x: 50, y: 0 },
        { x: 90, y: 0 },
      ]) as Path,
    ),
  ).toEqual([{ x: 50, y: 0 }]);
  expect(
    crossPaths(
      run,
      polyline([
        { x: 25, y: 0 },
        { x: 25, y: 40 },
      ]) as Path,
    ),
  ).toHaveLength(1);
  expect(
    crossPaths(
      run,
      polyline([
        { x: 50, y: 1e-6 },
        { x: 90, y: 9 },
      ]) as Path,
    ),
  ).toEqual([]);
  const arc = arcPath({ x: 50, y: 30 }, 30, -Math.PI / 2, 1);
  expect(crossPaths(run, arc)).toHaveLength(1);
  expect(crossPaths(arc, run)).toHaveLength(1);
});

test('what runs along gives no crossing: a line, a curve and itself, a curve and a part of it', () => {
  const run = polyline([
    { x: 0, y: 0 },
    { x: 50, y: 0 },
  ]) as Path;
  expect(crossLineWithPath({ through: { x: 9, y: 0 }, direction: { x: 1, y: 0 } }, run)).toEqual([]);
  expect(
    crossPaths(
      run,
      polyline([
        { x: 20, y: 0 },
        { x: 90, y: 0 },
      ]) as Path,
    ),
  ).toEqual([]);
  fc.assert(
    fc.property(patternCubic, (c) => {
      expect(crossPaths([c], [c])).toEqual([]);
      expect(crossPaths([c], reversePath([c]))).toEqual([]);
    }),
    { numRuns: 50 },
  );
});

test('parallel lines and curves that keep their distance do not cross', () => {
  expect(crossPaths(arcPath({ x: 0, y: 0 }, 100, 0, 2), arcPath({ x: 0, y: 0 }, 100.000001, 0, 2))).toEqual([]);
  const run = (y: number) =>
    polyline([
      { x: 0, y },
      { x: 500, y },
    ]) as Path;
  expect(crossPaths(run(0), run(1e-6))).toEqual([]);
});

test('a curve that osculates a line crosses it once', () => {
  // y = x^3 / 100^2 about 0.
  const cubic: Cubic = {
    p0: { x: -100, y: -100 },
    p1: { x: -100 / 3, y: 100 },
    p2: { x: 100 / 3, y: -100 },
    p3: { x: 100, y: 100 },
  };
  const found = crossLineWithPath({ through: { x: 0, y: 0 }, direction: { x: 1, y: 0 } }, [cubic]);
  expect(found).toHaveLength(1);
  expect(Math.abs((found[0] as Point).y)).toBeLessThan(1e-7);
  expect(
    crossPaths(
      [cubic],
      polyline([
        { x: -80, y: 0 },
        { x: 90, y: 0 },
      ]) as Path,
    ),
  ).toHaveLength(1);
});

test('two cubics may cross nine times', () => {
  const wave: Cubic = { p0: { x: 0, y: 0 }, p1: { x: 300, y: 100 }, p2: { x: -200, y: 100 }, p3: { x: 100, y: 0 } };
  const turned: Cubic = { p0: { x: 0, y: 0 }, p1: { x: 100, y: 300 }, p2: { x: 100, y: -200 }, p3: { x: 0, y: 100 } };
  const found = crossPaths([wave], [turned]);
  for (const { point } of chordCrossings(wave, turned)) {
    expect(Math.min(...found.map((q) => gap(point, q)))).toBeLessThan(0.5);
  }
  expect(found.length).toBeGreaterThanOrEqual(chordCrossings(wave, turned).length);
});

test('curves that share both ends and are two still cross between them', () => {
  const wave: Cubic = { p0: { x: 0, y: 0 }, p1: { x: 40, y: 60 }, p2: { x: 80, y: -60 }, p3: { x: 120, y: 0 } };
  const other: Cubic = { ...wave, p1: { x: 40, y: -60 }, p2: { x: 80, y: 60 } };
  const met = crossPaths([wave], [other]).toSorted((a, b) => a.x - b.x);
  expect(met.map(({ x }) => Math.round(x))).toEqual([0, 60, 120]);
  for (const { y } of met) expect(y).toBeCloseTo(0, 6);
});
