import { type Cubic, derivativeAt, type Path, secondDerivativeAt } from './cubic.ts';
import { COINCIDENT } from './epsilon.ts';
import { cross, dot, norm, type Point, scale, subtract } from './point.ts';

/** The unit vector along `v`; null when it is no longer than COINCIDENT. */
export function unit(v: Point): Point | null {
  const length = norm(v);
  return length > COINCIDENT ? scale(v, 1 / length) : null;
}

/** The unit direction in which the piece leaves its start: toward the first control point apart from it. Null for a point. */
export function leaving(c: Cubic): Point | null {
  return unit(subtract(c.p1, c.p0)) ?? unit(subtract(c.p2, c.p0)) ?? unit(subtract(c.p3, c.p0));
}

/** The unit direction in which the piece arrives at its end. Null for a point. */
export function arriving(c: Cubic): Point | null {
  return unit(subtract(c.p3, c.p2)) ?? unit(subtract(c.p3, c.p1)) ?? unit(subtract(c.p3, c.p0));
}

/** The unit direction of travel at `t`; at a cusp inside the piece, the direction in which it is left. Null for a point. */
export function directionAt(c: Cubic, t: number): Point | null {
  if (t <= 0) return leaving(c);
  if (t >= 1) return arriving(c);
  return unit(derivativeAt(c, t)) ?? unit(secondDerivativeAt(c, t)) ?? leaving(c);
}

/** The angle from direction `a` to direction `b`, radians, anticlockwise positive, above -pi and up to pi. */
export function turnBetween(a: Point, b: Point): number {
  const angle = Math.atan2(cross(a, b), dot(a, b));
  return angle === -Math.PI ? Math.PI : angle;
}

/** A join of a path: the pieces before and after by index, and the turn of direction between them in radians. */
export interface Join {
  readonly before: number;
  readonly after: number;
  readonly turn: number;
}

/** Every join between pieces that have a length; pieces shrunk to a point are passed over. */
export function joinsOf(path: Path): Join[] {
  const joins: Join[] = [];
  let before = -1;
  let incoming: Point | null = null;
  for (let after = 0; after < path.length; after++) {
    const piece = path[after] as Cubic;
    const outgoing = leaving(piece);
    if (!outgoing) continue;
    if (incoming) joins.push({ before, after, turn: turnBetween(incoming, outgoing) });
    before = after;
    incoming = arriving(piece);
  }
  return joins;
}
