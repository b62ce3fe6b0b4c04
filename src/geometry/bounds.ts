import { type Path, pointAt } from './cubic.ts';
import { startOf } from './path.ts';
import type { Point } from './point.ts';
import { signChanges } from './polynomial.ts';
import { powerOf } from './power.ts';

/** The upright box about something, mm. */
export interface Bounds {
  readonly min: Point;
  readonly max: Point;
}

const turns = new Float64Array(2);

/** The box about the path itself, not about its handles: the curve's own furthest points. */
export function boundsOf(path: Path): Bounds {
  const points: Point[] = [startOf(path)];
  for (const piece of path) {
    const b = powerOf(piece);
    points.push(piece.p3);
    for (const slope of [
      [b.x1, 2 * b.x2, 3 * b.x3],
      [b.y1, 2 * b.y2, 3 * b.y3],
    ]) {
      const count = signChanges(slope, 2, turns);
      for (const t of turns.subarray(0, count)) points.push(pointAt(piece, t));
    }
  }
  return pointsBounds(points);
}

/** The box about the points. Of no points: an empty box, from Infinity to -Infinity. */
export function pointsBounds(points: readonly Point[]): Bounds {
  let minX = Number.POSITIVE_INFINITY;
  let minY = Number.POSITIVE_INFINITY;
  let maxX = Number.NEGATIVE_INFINITY;
  let maxY = Number.NEGATIVE_INFINITY;
  for (const { x, y } of points) {
    minX = Math.min(minX, x);
    minY = Math.min(minY, y);
    maxX = Math.max(maxX, x);
    maxY = Math.max(maxY, y);
  }
  return { min: { x: minX, y: minY }, max: { x: maxX, y: maxY } };
}
