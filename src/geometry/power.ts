import type { Cubic } from './cubic.ts';

/** A cubic piece as a polynomial: B(t) = p0 + c1 t + c2 t^2 + c3 t^3, both coordinates, and p0. */
export interface Power {
  readonly x0: number;
  readonly x1: number;
  readonly x2: number;
  readonly x3: number;
  readonly y0: number;
  readonly y1: number;
  readonly y2: number;
  readonly y3: number;
}

/** The power form of `c`. Exact enough on 0..1: the coefficients are at most a few times the size of the piece. */
export function powerOf(c: Cubic): Power {
  const { p0, p1, p2, p3 } = c;
  return {
    x0: p0.x,
    x1: 3 * (p1.x - p0.x),
    x2: 3 * (p0.x - 2 * p1.x + p2.x),
    x3: p3.x - p0.x + 3 * (p1.x - p2.x),
    y0: p0.y,
    y1: 3 * (p1.y - p0.y),
    y2: 3 * (p0.y - 2 * p1.y + p2.y),
    y3: p3.y - p0.y + 3 * (p1.y - p2.y),
  };
}
