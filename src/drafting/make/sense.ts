import { PARALLEL } from '../../geometry/epsilon.ts';
import { dot, type Point } from '../../geometry/point.ts';

/**
 * The sense of a direction that goes a given way: 1 with it, -1 against it, 0 when the two are square to each other and
 * neither sense goes that way. Both are unit vectors.
 */
export function senseToward(direction: Point, way: Point): 1 | -1 | 0 {
  const along = dot(direction, way);
  if (Math.abs(along) < PARALLEL) return 0;
  return along > 0 ? 1 : -1;
}
