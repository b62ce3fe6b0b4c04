import type { Path } from '../../geometry/cubic.ts';
import { cross, distance, dot, norm, type Point, subtract } from '../../geometry/point.ts';
import { HANDLE_LEAST, HANDLE_REACH } from '../limits.ts';
import type { Passing } from '../step.ts';
import { chordAt } from './directions.ts';

/**
 * How a drawn curve passes each of its points: the settings that, written into the step, draw the same curve again and
 * let its handles be moved from where they are. `path` is a curve that a `curve` step made, one piece a span.
 */
export function passingsOf(path: Path): readonly Passing[] {
  const points = [...path.map((piece) => piece.p0), ...path.slice(-1).map((piece) => piece.p3)];
  return points.map((_, i): Passing => {
    const [into, out] = [path[i - 1], path[i]];
    const arriving = into && subtract(into.p3, into.p2);
    const leaving = out && subtract(out.p1, out.p0);
    const before = into && arriving ? norm(arriving) / distance(into.p0, into.p3) : null;
    const after = out && leaving ? norm(leaving) / distance(out.p0, out.p3) : null;
    const direction = (leaving ?? arriving) as Point;
    // At an end the handle of the span that is not there is never used.
    return { turn: turnFrom(chordAt(points, i), direction), before: before ?? after ?? 1, after: after ?? before ?? 1 };
  });
}

/**
 * The passing of a point when one of its handles is moved to a place: the curve turns with the handle, and the handle
 * on the other side keeps its length. The handle never shrinks to nothing, where the curve would lose its direction.
 */
export function passingMoved(
  points: readonly Point[],
  at: number,
  side: 'before' | 'after',
  place: Point,
  was: Passing,
): Passing {
  const here = points[at] as Point;
  const neighbour = points[side === 'after' ? at + 1 : at - 1];
  // Is there no span on that side?
  if (!neighbour) return was;
  const handle = side === 'after' ? subtract(place, here) : subtract(here, place);
  const length = norm(handle) / distance(here, neighbour);
  if (!(length >= HANDLE_LEAST)) return { ...was, [side]: HANDLE_LEAST };
  return { ...was, turn: turnFrom(chordAt(points, at), handle), [side]: Math.min(length, HANDLE_REACH) };
}

/** The angle from one direction to another in radians, anticlockwise, from -pi to pi. */
const turnFrom = (from: Point, to: Point): number => Math.atan2(cross(from, to), dot(from, to));
