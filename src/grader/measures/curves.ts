import { sameShape } from '../../drafting/same-shape.ts';
import { bowOf, greatestBow } from '../../geometry/bow.ts';
import { greatestDistance } from '../../geometry/compare.ts';
import { nearestPoint } from '../../geometry/nearest.ts';
import { startOf } from '../../geometry/path.ts';
import { distance, type Point, subtract } from '../../geometry/point.ts';
import { cornersOf } from '../../geometry/smooth.ts';
import type { BowCheck, ShapeCheck, SmoothnessCheck } from '../exercise.ts';
import { arrowBack } from './arrow-back.ts';
import { pointNamed } from './lookup.ts';
import { plainReading, type Reading, type Take } from './reading.ts';

export const takeBow: Take<BowCheck> = (_check, { answer, right }) => {
  if (answer.kind !== 'curve' || right.kind !== 'curve') return null;
  const bow = greatestBow(answer.path);
  const wanted = answer === right ? (bow?.by ?? 0) : bowOf(right.path);
  return { ...plainReading(bow?.by ?? 0, wanted), arrow: bow && arrowBack(bow, bow.by - wanted) };
};

export const takeShape: Take<ShapeCheck> = (_check, { answer, right }) => {
  if (answer.kind !== 'curve' || right.kind !== 'curve') return null;
  // Is it the very same curve? Then there is nothing to look for, and looking takes longest where curves run together.
  if (sameShape(answer, right)) return reached(0, startOf(answer.path), startOf(answer.path));
  const worst = greatestDistance(answer.path, right.path);
  return worst.on === 'a'
    ? reached(worst.distance, worst.at, nearestPoint(right.path, worst.at))
    : reached(worst.distance, nearestPoint(answer.path, worst.at), worst.at);
};

/** How far an answer strays, and from where to where it should be. */
function reached(measured: number, from: Point, to: Point): Reading {
  return { measured, expected: 0, unit: 'mm', displacement: subtract(from, to), spot: null, arrow: { from, to } };
}

/** A join this near to a point where a corner is meant is that corner, mm. */
const AT_CORNER = 1;

export const takeSmoothness: Take<SmoothnessCheck> = (check, { answer, reference }) => {
  if (answer.kind !== 'curve') return null;
  const meant = (check.corners ?? []).map((name) => pointNamed(reference, name));
  const breaks = cornersOf(answer.path).filter(
    (at) => !meant.some((corner) => corner !== null && distance(corner, at.point) <= AT_CORNER),
  );
  const sharpest = Math.max(0, ...breaks.map((at) => Math.abs(at.angle)));
  return plainReading((sharpest * 180) / Math.PI, 0, 'deg');
};
