import { sameShape } from '../../drafting/same-shape.ts';
import { bowOf, type GreatestDistance, greatestDistance } from '../../geometry/compare.ts';
import type { Path } from '../../geometry/cubic.ts';
import { lengthOf } from '../../geometry/length.ts';
import { nearestOn } from '../../geometry/nearest.ts';
import { startOf } from '../../geometry/path.ts';
import { distance, subtract } from '../../geometry/point.ts';
import { breaksOf, inflectionsOf } from '../../geometry/smooth.ts';
import { pieceBetween } from '../../geometry/station.ts';
import type { BowCheck, InflectionCheck, ShapeCheck, SmoothnessCheck } from '../exercise.ts';
import { pointNamed } from './lookup.ts';
import { plainReading, type Take } from './reading.ts';

export const takeBow: Take<BowCheck> = (_check, { answer, right }) => {
  if (answer.kind !== 'curve' || right.kind !== 'curve') return null;
  return plainReading(bowOf(answer.path), bowOf(right.path));
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

export const takeInflection: Take<InflectionCheck> = (_check, { answer, right }) => {
  if (answer.kind !== 'curve' || right.kind !== 'curve') return null;
  return plainReading(reverseDepth(answer.path), reverseDepth(right.path));
};

/** How deep the lesser of a curve's two ways of bending is, mm: each stretch between inflections has its bow; 0 when it bends one way only. */
function reverseDepth(path: Path): number {
  const ends = [0, ...inflectionsOf(path), lengthOf(path)];
  let left = 0;
  let right = 0;
  for (let i = 1; i < ends.length; i++) {
    const stretch = pieceBetween(path, ends[i - 1] ?? 0, ends[i] ?? 0);
    const bow = stretch === null ? 0 : bowOf(stretch);
    left = Math.max(left, bow);
    right = Math.max(right, -bow);
  }
  return Math.min(left, right);
}
