import { arcPath } from '../../geometry/arc.ts';
import type { Path } from '../../geometry/cubic.ts';
import { angleFrom, crossLines, type Line, parallelAt } from '../../geometry/line.ts';
import { endOf, joinPaths, polyline, startOf } from '../../geometry/path.ts';
import { add, type Point, quarterTurn, scale } from '../../geometry/point.ts';
import { upward } from './upward.ts';

/** A collar's two edges, each from the centre back. */
export interface CollarEdges {
  readonly neck: Path;
  readonly outer: Path;
}

export interface StripGiven {
  readonly shoulder: Point;
  /** The direction it was swung from, and the line it was swung to. Both are taken through the shoulder, directed up. */
  readonly roll: Line;
  readonly swung: Line;
  /** Length of the back neck, width of the collar and how far it goes on in front, mm. */
  readonly back: number;
  readonly width: number;
  readonly front: number;
}

/**
 * The collar as it is when it has only been swung: a straight strip beside the roll line, its back part turned about the
 * shoulder, and the outer edge carried round the opening as an arc. Swung the wrong way, the edge is cut off where its
 * two parts cross. Null for a strip of no size.
 */
export function swungStrip({ shoulder, roll, swung, back, width, front }: StripGiven): CollarEdges | null {
  const lower: Line = { through: shoulder, direction: upward(roll).direction };
  const upper: Line = { through: shoulder, direction: upward(swung).direction };
  const [top, foot] = [add(shoulder, scale(upper.direction, back)), add(shoulder, scale(lower.direction, -front))];
  const out = (p: Point, along: Line): Point => add(p, scale(quarterTurn(along.direction), width));
  const behind = polyline([out(top, upper), out(shoulder, upper)]);
  const before = polyline([out(shoulder, lower), out(foot, lower)]);
  const neck = polyline([top, shoulder, foot]);
  if (!behind || !before || !neck) return null;
  const opened = angleFrom(upper, lower);
  const outer =
    opened < 0 ? closed(behind, before, upper, lower, width) : opening(behind, before, shoulder, opened, width);
  return outer && { neck, outer };
}

function opening(behind: Path, before: Path, about: Point, angle: number, width: number): Path | null {
  const from = endOf(behind);
  const round = arcPath(about, width, Math.atan2(from.y - about.y, from.x - about.x), angle);
  return joinPaths([behind, round, before]) ?? joinPaths([behind, before]);
}

function closed(behind: Path, before: Path, upper: Line, lower: Line, width: number): Path | null {
  const corner = crossLines(parallelAt(upper, width), parallelAt(lower, width));
  return polyline([startOf(behind), ...(corner ? [corner] : []), endOf(before)]);
}
