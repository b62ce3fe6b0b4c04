import { angleFrom, type Line } from '../../geometry/line.ts';

/** A line that leans further than this from the way it should run, in radians, runs across it: how far off it lies means nothing. */
const ACROSS = Math.PI / 3;

/** Whether a line runs across the right one rather than beside it. */
export function runsAcross(answer: Line, right: Line): boolean {
  return Math.abs(angleFrom(right, answer)) > ACROSS;
}
