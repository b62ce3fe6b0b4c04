import { COINCIDENT } from '../../geometry/epsilon.ts';
import { distance, type Point } from '../../geometry/point.ts';
import { message } from '../../words/message.ts';
import { directionsOf } from '../curve/directions.ts';
import { pathOf } from '../curve/path.ts';
import { failed, made, type Outcome } from '../outcome.ts';
import type { CurveShape } from '../shape.ts';
import type { CurveThrough } from '../step.ts';
import type { Given } from '../taken.ts';

/** The smooth curve through points; see `curve/directions.ts` and `curve/path.ts` for how it finds its way. */
export function makeCurve(given: Given<'curve'>, step: CurveThrough): Outcome<CurveShape> {
  const points = given.through.map((one) => one.point);
  const named = (index: number) => ({ named: step.through[index] ?? '' });
  // Do two points that follow each other lie in one place?
  const met = points.findIndex((point, i) => i > 0 && !(distance(point, points[i - 1] as Point) > COINCIDENT));
  if (met > 0) {
    return failed('through', message('problem.points-meet', { one: named(met - 1), other: named(met) }));
  }
  if (given.shape && given.shape.length !== points.length) {
    const values = { points: points.length, entries: given.shape.length };
    return failed('shape', message('problem.shape-count', values));
  }
  const shape = given.shape ?? points.map(() => null);
  const found = directionsOf(points, shape, given.leave ?? null, given.arrive ?? null);
  if (found.ok) return made({ kind: 'curve', path: pathOf(points, found.directions, shape) });
  const at = named(found.at);
  if (found.why === 'doubles-back') return failed('through', message('problem.doubles-back', { at }));
  return failed(found.at === 0 ? 'leave' : 'arrive', message('problem.heading-square', { at }));
}
