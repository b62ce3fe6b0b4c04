import { sameShape } from '../../drafting/same-shape.ts';
import { bowOf, greatestBow } from '../../geometry/bow.ts';
import { type GreatestDistance, greatestDistance } from '../../geometry/compare.ts';
import { nearestOn } from '../../geometry/nearest.ts';
import { startOf } from '../../geometry/path.ts';
import { distance, subtract } from '../../geometry/point.ts';
import { breaksOf } from '../../geometry/smooth.ts';
import type { BowCheck, ShapeCheck, SmoothnessCheck } from '../exercise.ts';
import { arrowBack } from './arrow-back.ts';
import { pointNamed } from './lookup.ts';
import { plainReading, type Take } from './reading.ts';

export const takeBow: Take<BowCheck> = (_check, { answer, right }) => {
  if (answer.kind !== 'curve' || right.kind !== 'curve') return null;
  const bow = greatestBow(answer.path);
  const wanted = bowOf(right.path);
  return { ...plainReading(bow?.by ?? 0, wanted), arrow: bow && arrowBack(bow, bow.by - wanted) };
};

export const takeShape: Take<ShapeCheck> = (_check, { answer, right }) => {
  if (answer.kind !== 'curve' || right.kind !== 'curve') return null;
  // Is it the very same curve? Then there is nothing to look for, and looking takes longest where curves run together.
  const at = startOf(answer.path);
  const none: GreatestDistance = { distance: 0, at, on: 'a' };
  const worst = sameShape(answer, right) ? none : greatestDistance(answer.path, right.path);
  const other = nearestOn(worst.on === 'a' ? right.path : answer.path, worst.at).point;
  const arrow = worst.on === 'a' ? { from: worst.at, to: other } : { from: other, to: worst.at };
  const displacement = subtract(arrow.from, arrow.to);
  return { measured: worst.distance, expected: 0, unit: 'mm', displacement, spot: null, arrow };
};

/** A join this near to a point where a corner is meant is that corner, mm. */
const AT_CORNER = 1;

export const takeSmoothness: Take<SmoothnessCheck> = (check, { answer, reference }) => {
  if (answer.kind !== 'curve') return null;
  const meant = (check.corners ?? []).map((name) => pointNamed(reference, name));
  const breaks = breaksOf(answer.path).filter(
    (at) => !meant.some((corner) => corner !== null && distance(corner, at.point) <= AT_CORNER),
  );
  const sharpest = Math.max(0, ...breaks.map((at) => Math.abs(at.angle)));
  return plainReading((sharpest * 180) / Math.PI, 0, 'deg');
};
