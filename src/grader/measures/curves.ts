import { sameShape } from '../../drafting/same-shape.ts';
import { type Bow, bowOf, greatestBow } from '../../geometry/bow.ts';
import { type GreatestDistance, greatestDistance } from '../../geometry/compare.ts';
import type { Path } from '../../geometry/cubic.ts';
import { lengthOf } from '../../geometry/length.ts';
import { nearestOn } from '../../geometry/nearest.ts';
import { startOf } from '../../geometry/path.ts';
import { distance, subtract } from '../../geometry/point.ts';
import { breaksOf, inflectionsOf } from '../../geometry/smooth.ts';
import { pieceBetween } from '../../geometry/station.ts';
import type { BowCheck, InflectionCheck, ShapeCheck, SmoothnessCheck } from '../exercise.ts';
import { pointNamed } from './lookup.ts';
import { plainReading, type Reading, type Take } from './reading.ts';

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

export const takeInflection: Take<InflectionCheck> = (_check, { answer, right }) => {
  if (answer.kind !== 'curve' || right.kind !== 'curve') return null;
  const reverse = reverseOf(answer.path);
  const [measured, wanted] = [depthOf(reverse), depthOf(reverseOf(right.path))];
  const arrow = reverse && arrowBack(reverse, Math.sign(reverse.by) * (measured - wanted));
  return { ...plainReading(measured, wanted), arrow };
};

/** From where a curve bows to where it would by so much less. */
function arrowBack({ at, left }: Bow, by: number): Reading['arrow'] {
  return { from: at, to: { x: at.x - left.x * by, y: at.y - left.y * by } };
}

/** How deep the reverse bend of a curve is, mm; 0 when it bends one way only. */
function depthOf(reverse: Bow | null): number {
  return Math.abs(reverse?.by ?? 0);
}

/** The lesser of a curve's two ways of bending: each stretch between inflections has its bow. Null when it bends one way only. */
function reverseOf(path: Path): Bow | null {
  const ends = [0, ...inflectionsOf(path), lengthOf(path)];
  const bows = ends.slice(1).flatMap((end, index) => {
    const stretch = pieceBetween(path, ends[index] ?? 0, end);
    const bow = stretch && greatestBow(stretch);
    return bow ? [bow] : [];
  });
  const [left, right] = [deepest(bows, 1), deepest(bows, -1)];
  if (left === null || right === null) return null;
  return left.by < -right.by ? left : right;
}

function deepest(bows: readonly Bow[], side: 1 | -1): Bow | null {
  const onSide = bows.filter(({ by }) => by * side > 0);
  return onSide.toSorted((a, b) => Math.abs(b.by) - Math.abs(a.by))[0] ?? null;
}
