import { crossLineWithPath } from '../../geometry/crossings.ts';
import { lineAlong, squareTo } from '../../geometry/line.ts';
import { nearestOn } from '../../geometry/nearest.ts';
import { startOf } from '../../geometry/path.ts';
import { cross, distance, dot, type Point, quarterTurn, scale, subtract } from '../../geometry/point.ts';
import { directionAtStation, pointAtStation } from '../../geometry/station.ts';
import type { CollarEdges } from './strip.ts';

/** A place on the neck edge and the one square across from it on the outer edge. */
export interface Across {
  readonly neck: Point;
  readonly outer: Point;
  /** How much longer the outer edge is than the neck edge, from the centre back to here, mm. */
  readonly gain: number;
}

/**
 * What the outer edge has gained on the neck edge at `station` of the neck edge, mm from the centre back: its length up to
 * where the square to `running` through that place meets it, less the station. At the centre back both begin, and nothing
 * is gained. Null off the neck edge, and where the square does not meet the outer edge.
 */
export function acrossAt(edges: CollarEdges, station: number, running: Point): Across | null {
  const neck = pointAtStation(edges.neck, station);
  const along = neck && lineAlong(neck, running);
  // Does it begin here?
  if (neck && station === 0) return { neck, outer: startOf(edges.outer), gain: 0 };
  if (!neck || !along) return null;
  const outward = scale(quarterTurn(along.direction), outerSide(edges));
  const hits = crossLineWithPath(squareTo(along, neck), edges.outer).filter((p) => dot(subtract(p, neck), outward) > 0);
  const outer = hits.reduce<Point | null>(
    (best, p) => (best && distance(best, neck) <= distance(p, neck) ? best : p),
    null,
  );
  return outer && { neck, outer, gain: nearestOn(edges.outer, outer).station - station };
}

/** On which side of the neck edge the collar lies: 1 to its left, -1 to its right. */
function outerSide({ neck, outer }: CollarEdges): 1 | -1 {
  const travel = directionAtStation(neck, 0) ?? { x: 0, y: 0 };
  return cross(travel, subtract(startOf(outer), startOf(neck))) < 0 ? -1 : 1;
}
