import type { Path } from '../../geometry/cubic.ts';
import { COINCIDENT } from '../../geometry/epsilon.ts';
import { lengthOf } from '../../geometry/length.ts';
import { nearestOn } from '../../geometry/nearest.ts';
import { offsetPath } from '../../geometry/offset.ts';
import { add, cross, type Point, quarterTurn, subtract } from '../../geometry/point.ts';
import { directionAtStation } from '../../geometry/station.ts';
import { message } from '../../words/message.ts';
import { failed, made, type Outcome } from '../outcome.ts';
import type { CurveShape } from '../shape.ts';
import type { Offset } from '../step.ts';
import type { Given } from '../taken.ts';
import { senseToward } from './sense.ts';

/**
 * The curve parallel to a curve at a distance, on a side: the side a direction points to from the middle of the curve,
 * or the side a point lies on where the curve is nearest to it. A negative distance lies on the other side.
 */
export function makeOffset({ of, distance, side }: Given<'offset'>, step: Offset): Outcome<CurveShape> {
  const left = side.kind === 'way' ? sideByWay(of.path, side, step) : sideByPoint(of.path, side, step);
  if (!left.ok) return left;
  // Is the parallel the curve itself?
  if (distance === 0) return made(of);
  const path = offsetPath(of.path, left.value * distance);
  if (path) return made({ kind: 'curve', path });
  const values = { of: { named: step.of }, distance: { mm: Math.abs(distance) } };
  return failed('distance', message('problem.no-parallel', values));
}

function sideByWay(path: Path, side: Extract<Given<'offset'>['side'], { kind: 'way' }>, step: Offset): Outcome<number> {
  const middle = directionAtStation(path, lengthOf(path) / 2) ?? { x: 0, y: 0 };
  const sense = senseToward(quarterTurn(middle), side.way);
  if (sense !== 0) return made(sense);
  const way = { said: message(`way.${side.word}`) };
  return failed('side', message('problem.no-side', { name: { named: step.of }, way }));
}

function sideByPoint(
  path: Path,
  side: Extract<Given<'offset'>['side'], { kind: 'point' }>,
  step: Offset,
): Outcome<number> {
  const near = nearestOn(path, side.point);
  // Does the point lie on the curve?
  if (near.distance <= COINCIDENT) {
    return failed('side', message('problem.side-on', { name: { named: side.name }, on: { named: step.of } }));
  }
  const turn = cross(courseAt(path, near.station), subtract(side.point, near.point));
  if (turn !== 0) return made(Math.sign(turn));
  return failed('side', message('problem.side-beyond', { name: { named: side.name }, of: { named: step.of } }));
}

/** The direction of a path at a station; at a corner, the mean of the directions before and after it. */
function courseAt(path: Path, station: number): Point {
  const either = (at: number): Point => directionAtStation(path, at) ?? { x: 0, y: 0 };
  // A station within COINCIDENT of a corner counts as the corner, so look a little further off.
  return add(either(station - 4 * COINCIDENT), either(station + 4 * COINCIDENT));
}
