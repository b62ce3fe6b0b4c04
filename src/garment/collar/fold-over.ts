import type { Path } from '../../geometry/cubic.ts';
import { type Line, signedDistance } from '../../geometry/line.ts';
import { add, type Point, quarterTurn, scale } from '../../geometry/point.ts';

/**
 * A point of cloth being folded over a line, seen from above. `fraction` 0 is flat, 1 folded over; between them the cloth
 * stands at `fraction` of half a turn, and what lies square to the line is foreshortened by the cosine of that angle.
 */
export function foldPoint(p: Point, over: Line, fraction: number): Point {
  const shorter = Math.cos(Math.PI * fraction) - 1;
  return add(p, scale(quarterTurn(over.direction), signedDistance(over, p) * shorter));
}

/** A path folded so. Seen from above the fold is an affine map, so the curve goes with its control points, exactly. */
export function foldPath(path: Path, over: Line, fraction: number): Path {
  const move = (p: Point): Point => foldPoint(p, over, fraction);
  return path.map(({ p0, p1, p2, p3 }) => ({ p0: move(p0), p1: move(p1), p2: move(p2), p3: move(p3) }));
}

/** Which side of the cloth is seen from above: its other side once it stands past upright. */
export function sideSeen(fraction: number): 'right' | 'other' {
  return fraction > 0.5 ? 'other' : 'right';
}
