import { lengthOf } from '../../geometry/length.ts';
import { stationOf } from '../../geometry/line.ts';
import { nearestOn } from '../../geometry/nearest.ts';
import { distance, type Point } from '../../geometry/point.ts';
import { message } from '../../words/message.ts';
import { failed, made, type Outcome } from '../outcome.ts';
import type { LengthShape } from '../shape.ts';
import type { Tape } from '../step.ts';
import type { Given } from '../taken.ts';

const lengthShape = (length: number): LengthShape => ({ kind: 'length', length });

/** The length of a whole curve, or of a line or curve between the feet of two points on it; never negative. */
export function makeTape({ along, from, to }: Given<'tape'>, step: Tape): Outcome<LengthShape> {
  // Are both ends there, or neither?
  if ((from === undefined) !== (to === undefined)) return failed(from ? 'to' : 'from', message('problem.one-end'));
  if (from === undefined || to === undefined) {
    if (along.kind === 'curve') return made(lengthShape(lengthOf(along.path)));
    return failed('from', message('problem.ends', { name: { named: step.along } }));
  }
  const station = (point: Point): number =>
    along.kind === 'line' ? stationOf(along.line, point) : nearestOn(along.path, point).station;
  return made(lengthShape(Math.abs(station(to.point) - station(from.point))));
}

/** A length worked out, so that it has a name. A tape shows nothing below zero. */
export function makeTapeSet({ length }: Given<'tape-set'>): Outcome<LengthShape> {
  if (length < 0) return failed('length', message('problem.below-zero', { length: { mm: length } }));
  return made(lengthShape(length));
}

/** The straight distance between two points. */
export function makeTapeBetween({ from, to }: Given<'tape-between'>): Outcome<LengthShape> {
  return made(lengthShape(distance(from.point, to.point)));
}
