import { COINCIDENT, PARALLEL } from './epsilon.ts';
import { add, cross, dot, norm, type Point, quarterTurn, scale, subtract } from './point.ts';

/** An unbounded straight line. `direction` has length 1 and gives the line a sense; its left is the positive side. */
export interface Line {
  readonly through: Point;
  readonly direction: Point;
}

/** The line from `a` toward `b`; null when the points coincide. */
export function lineThrough(a: Point, b: Point): Line | null {
  return lineAlong(a, subtract(b, a));
}

/** The line through `through` along `direction` (any length); null when the direction has no length. */
export function lineAlong(through: Point, direction: Point): Line | null {
  const length = norm(direction);
  if (!(length > COINCIDENT)) return null;
  return { through, direction: scale(direction, 1 / length) };
}

/** The line at right angles to `line` through `p`, turned anticlockwise from it. */
export function squareTo(line: Line, p: Point): Line {
  return { through: p, direction: quarterTurn(line.direction) };
}

/** The line beside `line` at a signed distance in mm, positive to its left. */
export function parallelAt(line: Line, distance: number): Line {
  return { through: add(line.through, scale(quarterTurn(line.direction), distance)), direction: line.direction };
}

/** Signed distance from the line to `p` in mm, positive to the left of its direction. */
export function signedDistance(line: Line, p: Point): number {
  return cross(line.direction, subtract(p, line.through));
}

/** Signed distance along the line from its `through` point to the foot of `p`, mm. */
export function stationOf(line: Line, p: Point): number {
  return dot(line.direction, subtract(p, line.through));
}

/** The foot of the square from `p` to the line. */
export function footOn(line: Line, p: Point): Point {
  return add(line.through, scale(line.direction, stationOf(line, p)));
}

/** Where two lines cross; null when they run parallel. */
export function crossLines(a: Line, b: Line): Point | null {
  const turn = cross(a.direction, b.direction);
  if (Math.abs(turn) < PARALLEL) return null;
  return add(a.through, scale(a.direction, cross(subtract(b.through, a.through), b.direction) / turn));
}

/** The angle from `a` to `b` as undirected lines, in radians, from -pi/2 (exclusive) to pi/2, positive anticlockwise. */
export function angleFrom(a: Line, b: Line): number {
  const raw = Math.atan2(cross(a.direction, b.direction), dot(a.direction, b.direction));
  if (raw > Math.PI / 2) return raw - Math.PI;
  if (raw <= -Math.PI / 2) return raw + Math.PI;
  return raw;
}
