import type { Cubic, Path } from '../geometry/cubic.ts';
import { lengthOf } from '../geometry/length.ts';
import { between, type Point, point } from '../geometry/point.ts';
import { blockRules } from './rules.ts';
import { solveRising } from './solve.ts';

/** Half a neckline, drafted with the centre line on x = 0 and the shoulder falling away to the right. */
export interface Necklines {
  /** From the neck point down to the centre, each square to the shoulder and to the centre line. */
  readonly front: Path;
  readonly back: Path;
  readonly width: number;
}

/**
 * The neck width at which front and back neckline together measure `half`, mm, found within CONVERGED; the curves have
 * their neck points at (width, 0). Null when no width does, which takes a neck far too small for the slope (radians).
 */
export function solveNecklines(half: number, slope: number): Necklines | null {
  const at = (width: number): Necklines => ({
    width,
    front: neckline(width, width + blockRules.frontNeckDeeperThanWide, slope),
    back: neckline(width, blockRules.backNeckDepth, slope),
  });
  const excess = (width: number): number => lengthOf(at(width).front) + lengthOf(at(width).back) - half;
  const width = solveRising(excess, leastWidth(slope), half);
  return width === null ? null : at(width);
}

/** Below this width a neckline's corner would lie beyond the centre line and the curve would loop past it. */
function leastWidth(slope: number): number {
  const rise = Math.tan(slope);
  // Does the front corner run past the centre faster than the neck widens? At half a right angle and beyond it does.
  if (!(rise < 1) || !(Math.abs(slope) < Math.PI / 2)) return Number.POSITIVE_INFINITY;
  const front = (blockRules.frontNeckDeeperThanWide * rise) / (1 - rise);
  return Math.max(0, front, blockRules.backNeckDepth * rise);
}

/** One cubic from (width, 0), square to the shoulder, to (0, -depth), square to the centre. */
function neckline(width: number, depth: number, slope: number): Path {
  const neck = point(width, 0);
  const centre = point(0, -depth);
  const corner: Point = point(width - depth * Math.tan(slope), -depth);
  const reach = blockRules.handleReach;
  const cubic: Cubic = { p0: neck, p1: between(neck, corner, reach), p2: between(centre, corner, reach), p3: centre };
  return [cubic];
}
