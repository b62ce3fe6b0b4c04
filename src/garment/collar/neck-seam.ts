import type { Sheet } from '../../drafting/sheet.ts';
import type { Name } from '../../drafting/step.ts';
import type { Path } from '../../geometry/cubic.ts';
import { endOf, joinPaths, reversePath, startOf } from '../../geometry/path.ts';
import { distance, type Point } from '../../geometry/point.ts';
import { pathCalled, pointCalled } from './called.ts';
import { runAlong } from './run.ts';

/** The garment's neck seam with the shoulder joined, from the centre back. */
export interface NeckSeam {
  /** The back neckline, from the centre back to the neck point. */
  readonly back: Path;
  /** The shoulder, on the seam. */
  readonly shoulder: Point;
  /** On from the neck point to where the collar ends. Null while it is not drafted. */
  readonly front: Path | null;
}

/** The neck seam of a draft, its front along the run of these names; null where the block has no neckline. */
export function neckSeamOf(sheet: Sheet, front: readonly Name[] = []): NeckSeam | null {
  const drawn = pathCalled(sheet, 'back-neckline');
  const shoulder = pointCalled(sheet, 'neck-point');
  if (!drawn || !shoulder) return null;
  const back = distance(startOf(drawn), shoulder) < distance(endOf(drawn), shoulder) ? reversePath(drawn) : drawn;
  return { back, shoulder, front: runAlong(sheet, front) };
}

/** Back and front in one; null while there is no front, or it does not begin at the neck point. */
export function wholeSeam({ back, front }: NeckSeam): Path | null {
  return front && joinPaths([back, front]);
}
