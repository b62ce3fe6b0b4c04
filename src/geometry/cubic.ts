import { between, type Point } from './point.ts';

/** One cubic Bézier piece: from p0 to p3, with handles p1 and p2, in mm. A straight piece has its handles at the thirds. */
export interface Cubic {
  readonly p0: Point;
  readonly p1: Point;
  readonly p2: Point;
  readonly p3: Point;
}

/** Cubic pieces joined end to end: never empty, each piece starts where the last one ended. */
export type Path = readonly Cubic[];

/** The straight piece from `a` to `b`, run through at an even pace. */
export function straight(a: Point, b: Point): Cubic {
  return { p0: a, p1: between(a, b, 1 / 3), p2: between(a, b, 2 / 3), p3: b };
}

/** The point at parameter `t`, 0 to 1; exact at both ends. Outside 0..1 the curve goes on as the polynomial does. */
export function pointAt(c: Cubic, t: number): Point {
  const u = 1 - t;
  const b0 = u * u * u;
  const b1 = 3 * u * u * t;
  const b2 = 3 * u * t * t;
  const b3 = t * t * t;
  return {
    x: b0 * c.p0.x + b1 * c.p1.x + b2 * c.p2.x + b3 * c.p3.x,
    y: b0 * c.p0.y + b1 * c.p1.y + b2 * c.p2.y + b3 * c.p3.y,
  };
}

/** The first derivative at `t`, mm for each whole run of the parameter. */
export function derivativeAt(c: Cubic, t: number): Point {
  const u = 1 - t;
  const b0 = 3 * u * u;
  const b1 = 6 * u * t;
  const b2 = 3 * t * t;
  return {
    x: b0 * (c.p1.x - c.p0.x) + b1 * (c.p2.x - c.p1.x) + b2 * (c.p3.x - c.p2.x),
    y: b0 * (c.p1.y - c.p0.y) + b1 * (c.p2.y - c.p1.y) + b2 * (c.p3.y - c.p2.y),
  };
}

/** The second derivative at `t`. */
export function secondDerivativeAt(c: Cubic, t: number): Point {
  const u = 6 * (1 - t);
  const v = 6 * t;
  return {
    x: u * (c.p2.x - 2 * c.p1.x + c.p0.x) + v * (c.p3.x - 2 * c.p2.x + c.p1.x),
    y: u * (c.p2.y - 2 * c.p1.y + c.p0.y) + v * (c.p3.y - 2 * c.p2.y + c.p1.y),
  };
}

/** The third derivative, the same everywhere on the piece. */
export function thirdDerivative(c: Cubic): Point {
  return {
    x: 6 * (c.p3.x - c.p0.x + 3 * (c.p1.x - c.p2.x)),
    y: 6 * (c.p3.y - c.p0.y + 3 * (c.p1.y - c.p2.y)),
  };
}

/** The two halves of the piece on either side of `t` (de Casteljau). They share the very same point. */
export function splitCubic(c: Cubic, t: number): readonly [Cubic, Cubic] {
  const a = between(c.p0, c.p1, t);
  const b = between(c.p1, c.p2, t);
  const d = between(c.p2, c.p3, t);
  const ab = between(a, b, t);
  const bd = between(b, d, t);
  const middle = between(ab, bd, t);
  return [
    { p0: c.p0, p1: a, p2: ab, p3: middle },
    { p0: middle, p1: bd, p2: d, p3: c.p3 },
  ];
}

/** The stretch of the piece from `t0` to `t1`; run backward when `t1 < t0`. Ends at 0 and 1 are kept exactly. */
export function subCubic(c: Cubic, t0: number, t1: number): Cubic {
  if (t0 === 0 && t1 === 1) return c;
  const third = (t1 - t0) / 3;
  const p0 = pointAt(c, t0);
  const p3 = pointAt(c, t1);
  const d0 = derivativeAt(c, t0);
  const d3 = derivativeAt(c, t1);
  return {
    p0,
    p1: { x: p0.x + d0.x * third, y: p0.y + d0.y * third },
    p2: { x: p3.x - d3.x * third, y: p3.y - d3.y * third },
    p3,
  };
}

/** The same piece run from its end to its start. */
export function reverseCubic(c: Cubic): Cubic {
  return { p0: c.p3, p1: c.p2, p2: c.p1, p3: c.p0 };
}
