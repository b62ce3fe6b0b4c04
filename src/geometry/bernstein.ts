import type { Cubic } from './cubic.ts';
import { cross, dot, type Point, subtract } from './point.ts';

/**
 * Bernstein coefficients of a polynomial on 0..1. Its values lie between the least and the greatest of them
 * (Farouki, The Bernstein polynomial basis: a centennial retrospective, 2012), which makes them bounds that cannot fail.
 */
export type Bernstein = readonly number[];

/** |D(t)|^2 for the cubic with control vectors d0..d3: degree 6. */
export function squareOfCubic(d0: Point, d1: Point, d2: Point, d3: Point): Bernstein {
  return [
    dot(d0, d0),
    dot(d0, d1),
    (3 * dot(d1, d1) + 2 * dot(d0, d2)) / 5,
    (dot(d0, d3) + 9 * dot(d1, d2)) / 10,
    (3 * dot(d2, d2) + 2 * dot(d1, d3)) / 5,
    dot(d2, d3),
    dot(d3, d3),
  ];
}

/** |B'(t)|^2: degree 4. */
export function speedSquare(c: Cubic): Bernstein {
  const v0 = subtract(c.p1, c.p0);
  const v1 = subtract(c.p2, c.p1);
  const v2 = subtract(c.p3, c.p2);
  return [dot(v0, v0), dot(v0, v1), (2 * dot(v1, v1) + dot(v0, v2)) / 3, dot(v1, v2), dot(v2, v2)].map((k) => 9 * k);
}

/** B'(t) x B''(t): degree 2, for the cubic terms cancel. */
export function bend(c: Cubic): Bernstein {
  const v0 = subtract(c.p1, c.p0);
  const v1 = subtract(c.p2, c.p1);
  const v2 = subtract(c.p3, c.p2);
  return [18 * cross(v0, v1), 9 * cross(v0, v2), 18 * cross(v1, v2)];
}

/** The coefficients on either half of 0..1 (de Casteljau). */
export function halveBernstein(coefficients: Bernstein): readonly [Bernstein, Bernstein] {
  const before: number[] = [];
  const after: number[] = [];
  let row = coefficients;
  while (row.length > 0) {
    before.push(row[0] as number);
    after.unshift(row.at(-1) as number);
    row = row.slice(1).map((k, i) => 0.5 * (k + (row[i] as number)));
  }
  return [before, after];
}
