import type { Path } from '../../geometry/cubic.ts';
import { straight } from '../../geometry/cubic.ts';
import { COINCIDENT } from '../../geometry/epsilon.ts';
import { footOn } from '../../geometry/line.ts';
import { nearestOn } from '../../geometry/nearest.ts';
import { distance, type Point } from '../../geometry/point.ts';
import { pieceBetween } from '../../geometry/station.ts';
import type { CurveShape, LineShape } from '../shape.ts';

/**
 * The part of a line or curve between the feet of two points on it, from the first to the second; null when it has no
 * length.
 */
export function partOf(along: LineShape | CurveShape, from: Point, to: Point): Path | null {
  if (along.kind === 'line') {
    const [start, end] = [footOn(along.line, from), footOn(along.line, to)];
    return distance(start, end) > COINCIDENT ? [straight(start, end)] : null;
  }
  const [start, end] = [nearestOn(along.path, from).station, nearestOn(along.path, to).station];
  return Math.abs(end - start) > COINCIDENT ? pieceBetween(along.path, start, end) : null;
}
