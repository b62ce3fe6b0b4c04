import { bend, speedSquare } from './bernstein.ts';
import { type Cubic, derivativeAt, pointAt, secondDerivativeAt, splitCubic, thirdDerivative } from './cubic.ts';
import { directionAt } from './direction.ts';
import { CONVERGED } from './epsilon.ts';
import { add, cross, dot, norm, type Point, quarterTurn, scale } from './point.ts';

/** The parallel of a piece at one parameter: where it is, which way the piece runs there, and how fast the parallel runs that way. */
export interface Beside {
  readonly point: Point;
  /** Unit direction of travel of the piece. */
  readonly direction: Point;
  /** Speed of the parallel along it, mm for each whole run of the parameter: negative where the piece is hollow tighter than the distance. */
  readonly pace: number;
}

/** The parallel at distance `d` (left positive) beside `c` at `t`: B + d N, at the pace |B'| (1 - kappa d). Null for a point. */
export function besideAt(c: Cubic, d: number, t: number): Beside | null {
  const direction = directionAt(c, t);
  if (!direction) return null;
  const point = add(pointAt(c, t), scale(quarterTurn(direction), d));
  return { point, direction, pace: norm(derivativeAt(c, t)) - d * turningAt(c, t) };
}

/** How fast the direction turns at `t`, radians for each whole run of the parameter: kappa |B'|. At a standstill, its limit. */
function turningAt(c: Cubic, t: number): number {
  const first = derivativeAt(c, t);
  const second = secondDerivativeAt(c, t);
  const square = dot(first, first);
  if (square > CONVERGED * CONVERGED) return cross(first, second) / square;
  const pull = dot(second, second);
  return pull > CONVERGED * CONVERGED ? cross(second, thirdDerivative(c)) / (2 * pull) : 0;
}

/** A stretch of a piece whose parallel runs the same way as the piece. */
export interface Stretch {
  readonly from: number;
  readonly to: number;
}

/** Halvings enough to bring a metre down to rounding. */
const DEEPEST = 44;

/** The stretches of the piece along which it is nowhere hollow tighter than `d`: where 1 - kappa d stays positive. */
export function forwardStretches(c: Cubic, d: number): Stretch[] {
  const stretches: Stretch[] = [];
  const visit = (part: Cubic, from: number, to: number, depth: number) => {
    const way = wayOf(part, d, depth === DEEPEST);
    if (way === 'backward') return;
    if (way === 'mixed') {
      const middle = 0.5 * (from + to);
      const [left, right] = splitCubic(part, 0.5);
      visit(left, from, middle, depth + 1);
      visit(right, middle, to, depth + 1);
      return;
    }
    const last = stretches.at(-1);
    if (last?.to === from) stretches[stretches.length - 1] = { from: last.from, to };
    else stretches.push({ from, to });
  };
  visit(c, 0, 1, 0);
  return stretches;
}

/** Whether |B'|^3 exceeds d (B' x B'') all along, nowhere, or in part, from the bounds of both; at the last by the middle alone. */
function wayOf(c: Cubic, d: number, last: boolean): 'forward' | 'backward' | 'mixed' {
  const speed = speedSquare(c);
  const pull = bend(c).map((k) => k * d);
  const pullMost = Math.max(...pull);
  if (pullMost <= 0 || Math.max(0, Math.min(...speed)) ** 1.5 > pullMost) return 'forward';
  if (Math.max(...speed) ** 1.5 < Math.min(...pull)) return 'backward';
  if (!last) return 'mixed';
  return (besideAt(c, d, 0.5)?.pace ?? 0) > 0 ? 'forward' : 'backward';
}
