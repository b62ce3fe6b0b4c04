import type { Path } from '../../geometry/cubic.ts';
import type { Line } from '../../geometry/line.ts';
import { joinPaths, pieceAt, polyline } from '../../geometry/path.ts';
import { add, scale } from '../../geometry/point.ts';
import { turnOf } from '../../geometry/smooth.ts';
import { straightRun } from '../../geometry/straight.ts';
import type { NeckSeam } from './neck-seam.ts';

/** How far the seam goes on where only its direction is known, mm. */
const ON = 50;

/**
 * The neck seam from the centre back to where it runs beside the roll line: the back neckline, and on from the shoulder the
 * straight run with which the front begins. Where there is none it goes on along the roll line (directed up).
 */
export function turningSeam({ back, shoulder, front }: NeckSeam, roll: Line): Path {
  const first = front && pieceAt(front, 0);
  const on = first && straightRun(first) ? [first] : polyline([shoulder, add(shoulder, scale(roll.direction, -ON))]);
  return (on && joinPaths([back, on])) ?? back;
}

/** The turn of a seam that bends one way, radians, whichever way that is. */
export function turnOfSeam(seam: Path): number {
  return Math.abs(turnOf(seam));
}
