import { sameShape } from '../../drafting/same-shape.ts';
import { type Bow, bowOf, greatestBow } from '../../geometry/bow.ts';
import type { Path } from '../../geometry/cubic.ts';
import { COINCIDENT } from '../../geometry/epsilon.ts';
import { lengthOf } from '../../geometry/length.ts';
import { between, distance } from '../../geometry/point.ts';
import { sharpestTurn, type Turning } from '../../geometry/sharpest.ts';
import { inflectionPlaces, inflectionsOf } from '../../geometry/smooth.ts';
import { type Place, pathBetween, pieceBetween } from '../../geometry/station.ts';

import type { BendCheck, InflectionCheck } from '../exercise.ts';
import { arrowBack } from './arrow-back.ts';
import { plainReading, type Reading, type Take } from './reading.ts';

/**
 * What makes an edge fair wherever it runs: that it bends to and fro no more often than it has to, and nowhere sharply. It is
 * what the fairness of curves is taken for elsewhere too: few stretches over which the bend grows or wanes (G. Farin and N.
 * Sapidis, "Curvature and the fairness of curves and surfaces", IEEE Computer Graphics and Applications 9(2), 1989; from
 * memory). How much is too much is common
 * practice, no source, and stands in the exercises.
 */
export const takeInflection: Take<InflectionCheck> = (_check, { answer, right }) => {
  if (answer.kind !== 'curve' || right.kind !== 'curve') return null;
  const back = bendingBack(answer.path);
  const [measured, wanted] = [back.by, answer === right ? back.by : bendingBack(right.path).by];
  // The arrow is drawn where it bends back most, and no further than to where it would not at all.
  const { most } = back;
  const less = most && Math.sign(most.by) * Math.min(measured - wanted, Math.abs(most.by));
  return { ...plainReading(measured, wanted), arrow: most && arrowBack(most, less ?? 0) };
};

/** The stretch over which a bend is read, mm: 2 in, which spans what the eye takes for one bend. Ours. */
export const STRETCH = 50.8;

export const takeBend: Take<BendCheck> = ({ over }, { answer, right }) => {
  if (answer.kind !== 'curve' || right.kind !== 'curve') return null;
  // Whoever draws the right one itself turns no more than it.
  if (sameShape(answer, right)) return plainReading(0, 0, 'deg');
  const length = over === 'whole' ? Number.POSITIVE_INFINITY : STRETCH;
  const turning = sharpestTurn(answer.path, length);
  const more = Math.max(0, turning.by - sharpestTurn(right.path, length).by);
  // Of what turns all along, no place can be shown.
  const arrow = over === 'whole' ? null : arrowStraight(turning);
  return { ...plainReading((more * 180) / Math.PI, 0, 'deg'), arrow };
};

/** From the middle of a bend to where it would be straight; none where a loop comes back to that place. */
function arrowStraight({ at, from, to }: Turning): Reading['arrow'] {
  const straight = between(from, to, 0.5);
  return distance(at, straight) > COINCIDENT ? { from: at, to: straight } : null;
}

/**
 * How far a path bends back in all, mm, as `takeInflection` measures it but for the last digits: cut where it turns, and not at so many
 * millimetres along it, which takes longer than all the rest.
 */
export function bendsBackBy(path: Path): number {
  const turns = inflectionPlaces(path);
  const ends = [{ index: 0, t: 0 }, ...turns, { index: path.length - 1, t: 1 }];
  let [left, right] = [0, 0];
  for (let at = 1; at < ends.length; at++) {
    const stretch = pathBetween(path, ends[at - 1] as Place, ends[at] as Place);
    const by = stretch.length === 0 ? 0 : bowOf(stretch);
    if (by > 0) left += by;
    else right -= by;
  }
  return Math.min(left, right);
}

/** How far a path bends back in all, mm, and where most. */
interface Back {
  readonly by: number;
  readonly most: Bow | null;
}

/** The lesser of a curve's two ways of bending: each stretch between inflections has its bow. Nothing where it bends one way only. */
function bendingBack(path: Path): Back {
  const turns = inflectionsOf(path);
  if (turns.length === 0) return { by: 0, most: null };
  const ends = [0, ...turns, lengthOf(path)];
  const bows = ends.slice(1).flatMap((end, index) => {
    const stretch = pieceBetween(path, ends[index] ?? 0, end);
    const bow = stretch && greatestBow(stretch);
    return bow ? [bow] : [];
  });
  const [left, right] = [toSide(bows, 1), toSide(bows, -1)];
  return left.by < right.by ? left : right;
}

function toSide(bows: readonly Bow[], side: 1 | -1): Back {
  const there = bows.filter(({ by }) => by * side > 0);
  const by = there.reduce((sum, bow) => sum + Math.abs(bow.by), 0);
  return { by, most: there.toSorted((a, b) => Math.abs(b.by) - Math.abs(a.by))[0] ?? null };
}
