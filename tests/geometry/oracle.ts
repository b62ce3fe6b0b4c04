import { Bezier } from 'bezier-js';
import paper from 'paper/dist/paper-core';
import type { Cubic, Path } from '../../src/geometry/cubic.ts';
import type { Point } from '../../src/geometry/point.ts';

// What the geometry is checked against: two libraries, and brute force that shares no code with it.

paper.setup(new paper.Size(1000, 1000));

/** The piece in bezier-js. */
export function bezierOf(c: Cubic): Bezier {
  return new Bezier([c.p0, c.p1, c.p2, c.p3].map(({ x, y }) => ({ x, y })));
}

/** The path in paper. */
export function paperOf(path: Path): paper.Path {
  const made = new paper.Path({ insert: false });
  const first = path[0] as Cubic;
  made.moveTo(new paper.Point(first.p0.x, first.p0.y));
  for (const { p1, p2, p3 } of path) {
    made.cubicCurveTo(new paper.Point(p1.x, p1.y), new paper.Point(p2.x, p2.y), new paper.Point(p3.x, p3.y));
  }
  return made;
}

/** The point at `t` by de Casteljau's construction. */
export function casteljau({ p0, p1, p2, p3 }: Cubic, t: number): Point {
  return { x: constructed([p0.x, p1.x, p2.x, p3.x], t), y: constructed([p0.y, p1.y, p2.y, p3.y], t) };
}

function constructed([a, b, c, d]: readonly [number, number, number, number], t: number): number {
  const u = 1 - t;
  const [ab, bc, cd] = [u * a + t * b, u * b + t * c, u * c + t * d];
  return u * (u * ab + t * bc) + t * (u * bc + t * cd);
}

/** Points along the path, `count` runs a piece, both ends included. */
export function samples(path: Path, count: number): Point[] {
  return path.flatMap((c, i) =>
    Array.from({ length: count + 1 }, (_, k) => casteljau(c, k / count)).slice(i === 0 ? 0 : 1),
  );
}

export function gap(a: Point, b: Point): number {
  return Math.hypot(a.x - b.x, a.y - b.y);
}

/** The length of straight runs through the points. */
export function runLength(points: readonly Point[]): number {
  return points.slice(1).reduce((sum, p, i) => sum + gap(points[i] as Point, p), 0);
}

/** The length by chords, extrapolated (Richardson): for curves without cusps right to about count^-4. */
export function chordLength(path: Path, count: number): number {
  const coarse = runLength(samples(path, count));
  const fine = runLength(samples(path, 2 * count));
  return fine + (fine - coarse) / 3;
}

/**
 * The least distance from `p` to the path, to 1e-10 mm, by halving: a piece whose chord, less what the curve may stand off
 * it, is no nearer than what was found is left. Samples would step over a curve that turns sharply.
 */
export function bruteDistance(path: Path, p: Point): number {
  let least = Number.POSITIVE_INFINITY;
  const pieces = [...path];
  for (let c = pieces.pop(); c; c = pieces.pop()) {
    const chord = chordDistance(c.p0, c.p3, p);
    const off = standOff(c);
    least = Math.min(least, chord + off);
    if (chord - off < least - 1e-10) pieces.push(...halves(c));
  }
  return least;
}

/** No place of the piece is farther than this from the chord, and none of the chord from the piece: the curve and the chord, run at the same pace, differ by two control points, of which no more than three quarters count. */
function standOff({ p0, p1, p2, p3 }: Cubic): number {
  const off = (q: Point, t: number) => gap(q, { x: p0.x + t * (p3.x - p0.x), y: p0.y + t * (p3.y - p0.y) });
  return 0.75 * Math.max(off(p1, 1 / 3), off(p2, 2 / 3));
}

function chordDistance(a: Point, b: Point, p: Point): number {
  const [ux, uy] = [b.x - a.x, b.y - a.y];
  const long = ux * ux + uy * uy;
  const t = long === 0 ? 0 : Math.min(1, Math.max(0, ((p.x - a.x) * ux + (p.y - a.y) * uy) / long));
  return gap(p, { x: a.x + t * ux, y: a.y + t * uy });
}

/** The two halves of a piece, by de Casteljau. */
function halves({ p0, p1, p2, p3 }: Cubic): [Cubic, Cubic] {
  const mid = (a: Point, b: Point): Point => ({ x: (a.x + b.x) / 2, y: (a.y + b.y) / 2 });
  const [a, b, c] = [mid(p0, p1), mid(p1, p2), mid(p2, p3)];
  const [ab, bc] = [mid(a, b), mid(b, c)];
  const m = mid(ab, bc);
  return [
    { p0, p1: a, p2: ab, p3: m },
    { p0: m, p1: bc, p2: c, p3 },
  ];
}

/** The least value of `f` between `a` and `b`, where it has one bottom. */
export function golden(f: (t: number) => number, a: number, b: number): number {
  const ratio = (Math.sqrt(5) - 1) / 2;
  let low = a;
  let high = b;
  let c = high - ratio * (high - low);
  let d = low + ratio * (high - low);
  let atC = f(c);
  let atD = f(d);
  for (let i = 0; i < 45; i++) {
    if (atC < atD) {
      high = d;
      d = c;
      atD = atC;
      c = high - ratio * (high - low);
      atC = f(c);
    } else {
      low = c;
      c = d;
      atC = atD;
      d = low + ratio * (high - low);
      atD = f(d);
    }
  }
  return Math.min(atC, atD);
}

/** The least pace of the piece as a share of its greatest: small near a cusp, where brute force loses its accuracy. */
export function evenness(c: Cubic): number {
  const paces = Array.from({ length: 101 }, (_, k) => {
    const before = casteljau(c, Math.max(0, k / 100 - 1e-4));
    return gap(before, casteljau(c, Math.min(1, k / 100 + 1e-4)));
  });
  return Math.min(...paces) / Math.max(...paces);
}

/** The length of the parabola with control points q0, q1, q2, by the closed form of its arc length. */
export function parabolaLength(q0: Point, q1: Point, q2: Point): number {
  const ax = q0.x - 2 * q1.x + q2.x;
  const ay = q0.y - 2 * q1.y + q2.y;
  const bx = 2 * (q1.x - q0.x);
  const by = 2 * (q1.y - q0.y);
  // |q'(t)|^2 = A t^2 + B t + C.
  const A = 4 * (ax * ax + ay * ay);
  const B = 4 * (ax * bx + ay * by);
  const C = bx * bx + by * by;
  if (A < 1e-12) return Math.sqrt(C);
  const h = B / (2 * A);
  const k = Math.max(0, C / A - h * h);
  const antiderivative = (u: number) => {
    const root = Math.sqrt(u * u + k);
    return 0.5 * (u * root + (k > 0 ? k * Math.asinh(u / Math.sqrt(k)) : 0));
  };
  return Math.sqrt(A) * (antiderivative(1 + h) - antiderivative(h));
}

export function paperPoint({ x, y }: Point): paper.Point {
  return new paper.Point(x, y);
}

/** The second derivative by bezier-js; its types leave the method out. */
export function secondOf(b: Bezier, t: number): Point {
  return (b as Bezier & { dderivative(t: number): Point }).dderivative(t);
}
