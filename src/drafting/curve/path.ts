import type { Cubic, Path } from '../../geometry/cubic.ts';
import { add, distance, type Point, scale, subtract } from '../../geometry/point.ts';
import type { Passing } from '../step.ts';
import { freeHandles } from './handles.ts';

/**
 * The smooth curve through points with a unit direction at each. Handles are as long as the passings say, as fractions
 * of the chord of their span; a point without a passing takes the free handles of the span.
 */
export function pathOf(
  points: readonly Point[],
  directions: readonly Point[],
  shape: readonly (Passing | null)[],
): Path {
  return points.slice(1).map((end, i): Cubic => {
    const start = points[i] as Point;
    const [leaving, arriving] = [directions[i] as Point, directions[i + 1] as Point];
    const chord = subtract(end, start);
    const length = distance(start, end);
    const free = freeHandles(chord, leaving, arriving);
    const after = shape[i]?.after ?? free.after;
    const before = shape[i + 1]?.before ?? free.before;
    return {
      p0: start,
      p1: add(start, scale(leaving, after * length)),
      p2: subtract(end, scale(arriving, before * length)),
      p3: end,
    };
  });
}
