import type { Sheet } from '../../drafting/sheet.ts';
import type { Path } from '../../geometry/cubic.ts';
import { endOf, joinPaths, polyline, reversePath, startOf } from '../../geometry/path.ts';
import { distance, type Point } from '../../geometry/point.ts';
import { pathCalled, pointCalled } from './called.ts';

/** The garment's neck seam with the shoulder joined, from the centre back, in its two parts. */
export interface NeckSeam {
  /** The back neckline, from the centre back to the neck point. */
  readonly back: Path;
  /** The shoulder, on the seam. */
  readonly shoulder: Point;
  /** On from the neck point, as far as the front seam is drafted: to the gorge corner, and the notch. Null before that. */
  readonly front: Path | null;
}

/** The neck seam of a draft; null where the block has none. */
export function neckSeamOf(sheet: Sheet): NeckSeam | null {
  const drawn = pathCalled(sheet, 'back-neckline');
  const shoulder = pointCalled(sheet, 'neck-point');
  if (!drawn || !shoulder) return null;
  const back = distance(startOf(drawn), shoulder) < distance(endOf(drawn), shoulder) ? reversePath(drawn) : drawn;
  const corners = ['gorge-corner', 'notch'].map((name) => pointCalled(sheet, name));
  // The notch counts only after its corner.
  const front = corners[0] ? corners.filter((p) => p !== null) : [];
  return { back, shoulder, front: polyline([shoulder, ...front]) };
}

/** The whole seam, as far as it is drafted. */
export function wholeSeam({ back, front }: NeckSeam): Path {
  return (front && joinPaths([back, front])) ?? back;
}
