import type { Path } from '../../geometry/cubic.ts';
import { COINCIDENT } from '../../geometry/epsilon.ts';
import { lengthOf } from '../../geometry/length.ts';
import { type Line, stationOf } from '../../geometry/line.ts';
import { nearestOn } from '../../geometry/nearest.ts';
import { add, type Point, scale } from '../../geometry/point.ts';
import { directionAtStation, pointAtStation } from '../../geometry/station.ts';
import { message } from '../../words/message.ts';
import { failed, made, type Outcome } from '../outcome.ts';
import type { PointShape } from '../shape.ts';
import type { Along } from '../step.ts';
import type { Given } from '../taken.ts';
import { HAIR } from './hair.ts';
import { senseToward } from './sense.ts';

/**
 * A distance along a line or curve, from the foot on it of a point, toward something. A negative distance goes the
 * other way.
 */
export function makeAlong(given: Given<'along'>, step: Along): Outcome<PointShape> {
  const { on, from } = given;
  return on.kind === 'line'
    ? alongLine(on.line, stationOf(on.line, from.point), given, step)
    : alongCurve(on.path, nearestOn(on.path, from.point).station, given, step);
}

function alongLine(line: Line, start: number, given: Given<'along'>, step: Along): Outcome<PointShape> {
  const sense = senseOf(line.direction, start, (point) => stationOf(line, point), given, step);
  if (!sense.ok) return sense;
  return made({
    kind: 'point',
    point: add(line.through, scale(line.direction, start + sense.value * given.distance)),
  });
}

function alongCurve(path: Path, start: number, given: Given<'along'>, step: Along): Outcome<PointShape> {
  const direction = directionAtStation(path, start) ?? { x: 0, y: 0 };
  const sense = senseOf(direction, start, (point) => nearestOn(path, point).station, given, step);
  if (!sense.ok) return sense;
  const station = start + sense.value * given.distance;
  const point = pointAtStation(path, station);
  if (point) return made({ kind: 'point', point });
  const left = station < 0 ? start : lengthOf(path) - start;
  const values = { distance: { mm: Math.abs(given.distance) }, on: { named: step.on } };
  if (Math.abs(given.distance) - left < HAIR) return failed('distance', message('problem.off-end-hair', values));
  return failed('distance', message('problem.off-end', { ...values, left: { mm: left } }));
}

function senseOf(
  direction: Point,
  start: number,
  station: (point: Point) => number,
  { toward }: Given<'along'>,
  step: Along,
): Outcome<1 | -1> {
  if (toward.kind === 'way') {
    const sense = senseToward(direction, toward.way);
    if (sense !== 0) return made(sense);
    const way = { said: message(`way.${toward.word}`) };
    return failed('toward', message('problem.no-sense', { name: { named: step.on }, way }));
  }
  const gap = station(toward.point) - start;
  if (Math.abs(gap) > COINCIDENT) return made(gap > 0 ? 1 : -1);
  const values = { name: { named: toward.name }, from: { named: step.from } };
  return failed('toward', message('problem.toward-here', values));
}
