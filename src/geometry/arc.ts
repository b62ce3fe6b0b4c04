import type { Cubic, Path } from './cubic.ts';
import { FIT } from './epsilon.ts';
import { add, heading, type Point, quarterTurn, scale } from './point.ts';

/** How far the usual cubic strays outside a quarter of the unit circle (2.7253e-4), to first order as the 6th power of its angle. */
const QUARTER_ERROR = 2.7253e-4;

/**
 * The arc about `centre` from the angle `fromAngle` through `sweep` (radians, anticlockwise positive).
 * The pieces are short enough that it is right within a quarter of FIT: about 5 degrees each at a radius of 500 mm.
 * A radius or a sweep of nothing gives a single piece that is a point.
 */
export function arcPath(centre: Point, radius: number, fromAngle: number, sweep: number): Path {
  const widest = (Math.PI / 2) * Math.min(1, (FIT / 4 / (QUARTER_ERROR * Math.abs(radius))) ** (1 / 6));
  const count = Math.max(1, Math.ceil(Math.abs(sweep) / widest));
  const step = sweep / count;
  // The handle length that puts the middle of each piece on the circle.
  const reach = (4 / 3) * Math.tan(step / 4) * radius;
  const pieces: Cubic[] = [];
  let out = heading(fromAngle);
  let p0 = add(centre, scale(out, radius));
  for (let i = 1; i <= count; i++) {
    const next = heading(fromAngle + i * step);
    const p3 = add(centre, scale(next, radius));
    pieces.push({ p0, p1: add(p0, scale(quarterTurn(out), reach)), p2: add(p3, scale(quarterTurn(next), -reach)), p3 });
    out = next;
    p0 = p3;
  }
  return pieces;
}
