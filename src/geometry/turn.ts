import type { Cubic, Path } from './cubic.ts';
import { joinsOf, turnBetween } from './direction.ts';
import { COINCIDENT } from './epsilon.ts';
import { add, between, dot, norm, type Point, subtract } from './point.ts';

/**
 * The angle the path turns through from its start to its end, radians, anticlockwise positive, corners included: the
 * integral of the curvature. A straight reversal counts as half a turn anticlockwise.
 */
export function turnOf(path: Path): number {
  let sum = 0;
  for (const piece of path) sum += cubicTurn(piece);
  for (const join of joinsOf(path)) sum += join.turn;
  return sum;
}

/** The angle the piece turns through, radians; handles no longer than COINCIDENT give no direction. */
export function cubicTurn(c: Cubic): number {
  return turnWithin(snapped(c.p0, c.p1), snapped(c.p1, c.p2), snapped(c.p2, c.p3), 0);
}

const NOTHING: Point = { x: 0, y: 0 };

function snapped(from: Point, to: Point): Point {
  const v = subtract(to, from);
  return norm(v) > COINCIDENT ? v : NOTHING;
}

/** Enough halvings to bring a cusp down to rounding. */
const DEEPEST = 48;

/**
 * The angle swept by the hodograph, the quadratic curve v0, v1, v2 that the direction of travel follows. Where all three
 * lie within a right angle of their sum it cannot go the long way round the origin, and the sweep is the plain angle from
 * first to last; else it is halved.
 */
function turnWithin(v0: Point, v1: Point, v2: Point, depth: number): number {
  const first = directed(v0) ?? directed(v1) ?? directed(v2);
  const last = directed(v2) ?? directed(v1) ?? directed(v0);
  if (!first || !last) return 0;
  const sum = add(add(v0, v1), v2);
  const narrow = goesWith(v0, sum) && goesWith(v1, sum) && goesWith(v2, sum);
  if (narrow || depth === DEEPEST) return turnBetween(first, last);
  const left = between(v0, v1, 0.5);
  const right = between(v1, v2, 0.5);
  const middle = between(left, right, 0.5);
  const halves = turnWithin(v0, left, middle, depth + 1) + turnWithin(middle, right, v2, depth + 1);
  // A hodograph through the origin is a cusp: the direction jumps there.
  return directed(middle) ? halves : halves + turnBetween(directed(left) ?? first, directed(right) ?? last);
}

/** Whether a vector lies within a right angle of another; one that has no length does. */
function goesWith(v: Point, sum: Point): boolean {
  return directed(v) === null || dot(v, sum) > 0;
}

/** The vector itself; null when it has no length. */
function directed(v: Point): Point | null {
  return v.x === 0 && v.y === 0 ? null : v;
}
