import { COINCIDENT } from '../../geometry/epsilon.ts';
import { type Line, lineThrough, parallelAt, signedDistance, squareTo } from '../../geometry/line.ts';
import { nearestOn } from '../../geometry/nearest.ts';
import { heading, quarterTurn } from '../../geometry/point.ts';
import { directionAtStation } from '../../geometry/station.ts';
import { message } from '../../words/message.ts';
import { failed, made, type Outcome } from '../outcome.ts';
import type { LineShape } from '../shape.ts';
import type { Parallel, Rule } from '../step.ts';
import type { Given } from '../taken.ts';
import { senseToward } from './sense.ts';

const lineShape = (line: Line): LineShape => ({ kind: 'line', line });

/** The line through two points, running from the first to the second. */
export function makeRule({ from, to }: Given<'rule'>, step: Rule): Outcome<LineShape> {
  const line = lineThrough(from.point, to.point);
  if (line) return made(lineShape(line));
  return failed('to', message('problem.same-place', { one: { named: step.from }, other: { named: step.to } }));
}

/** The line at right angles to a line, or to a curve at its place nearest the point, through the point. */
export function makeSquare({ to, through }: Given<'square'>): Outcome<LineShape> {
  if (to.kind === 'line') return made(lineShape(squareTo(to.line, through.point)));
  const station = nearestOn(to.path, through.point).station;
  const tangent = directionAtStation(to.path, station) ?? heading(0);
  return made(lineShape({ through: through.point, direction: quarterTurn(tangent) }));
}

/** The line beside a line at a distance, on a side; a negative distance lies on the other side. */
export function makeParallel({ to, distance, side }: Given<'parallel'>, step: Parallel): Outcome<LineShape> {
  const name = { named: step.to };
  if (side.kind === 'way') {
    const sense = senseToward(quarterTurn(to.line.direction), side.way);
    if (sense !== 0) return made(lineShape(parallelAt(to.line, sense * distance)));
    return failed('side', message('problem.no-side', { name, way: { said: message(`way.${side.word}`) } }));
  }
  const gap = signedDistance(to.line, side.point);
  if (Math.abs(gap) > COINCIDENT) return made(lineShape(parallelAt(to.line, Math.sign(gap) * distance)));
  return failed('side', message('problem.side-on', { name: { named: side.name }, on: name }));
}

/** The line beside a line, through a point. */
export function makeParallelThrough({ to, through }: Given<'parallel-through'>): Outcome<LineShape> {
  return made(lineShape({ through: through.point, direction: to.line.direction }));
}

/** The line turned from a line by an angle, through a point. */
export function makeSlant({ to, angle, turn, through }: Given<'slant'>): Outcome<LineShape> {
  const from = Math.atan2(to.line.direction.y, to.line.direction.x);
  return made(lineShape({ through: through.point, direction: heading(from + turn * angle) }));
}
