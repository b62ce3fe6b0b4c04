import { type Bernstein, bend, halveBernstein, speedSquare } from './bernstein.ts';
import { type Cubic, derivativeAt, pointAt, secondDerivativeAt, thirdDerivative } from './cubic.ts';
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

/** Halvings enough to place an end of a stretch to 1e-8 mm on a piece 1 m long; more would only find rounding. */
const DEEPEST = 36;

/** A part of a piece, with the Bernstein coefficients on it of |B'|^2 and of d (B' x B''). */
interface Part {
  readonly from: number;
  readonly to: number;
  readonly speed: Bernstein;
  readonly pull: Bernstein;
}

/** The stretches of the piece along which it is nowhere hollow tighter than `d`: where 1 - kappa d stays positive. */
export function forwardStretches(c: Cubic, d: number): Stretch[] {
  const whole = { from: 0, to: 1, speed: speedSquare(c), pull: bend(c).map((k) => k * d) };
  const parts = forwardParts(whole, 0, (t) => (besideAt(c, d, t)?.pace ?? 0) > 0);
  const stretches: Stretch[] = [];
  for (const { from, to } of parts) {
    const last = stretches.at(-1);
    if (last?.to === from) stretches[stretches.length - 1] = { from: last.from, to };
    else stretches.push({ from, to });
  }
  return stretches;
}

/** The forward parts in order; where the bounds cannot tell any more, `isForward` at the middle decides. */
function forwardParts(part: Part, depth: number, isForward: (t: number) => boolean): Part[] {
  const way = wayOf(part);
  if (way === 'forward') return [part];
  if (way === 'backward') return [];
  if (depth === DEEPEST) return isForward(0.5 * (part.from + part.to)) ? [part] : [];
  return halvesOf(part).flatMap((half) => forwardParts(half, depth + 1, isForward));
}

/** Whether |B'|^3 exceeds d (B' x B'') all along, nowhere, or in part, as far as the bounds of both can tell. */
function wayOf({ speed, pull }: Part): 'forward' | 'backward' | 'mixed' {
  const most = Math.max(...pull);
  if (most <= 0 || Math.max(0, Math.min(...speed)) ** 1.5 > most) return 'forward';
  return Math.max(...speed) ** 1.5 < Math.min(...pull) ? 'backward' : 'mixed';
}

function halvesOf({ from, to, speed, pull }: Part): readonly [Part, Part] {
  const middle = 0.5 * (from + to);
  const [speedBefore, speedAfter] = halveBernstein(speed);
  const [pullBefore, pullAfter] = halveBernstein(pull);
  return [
    { from, to: middle, speed: speedBefore, pull: pullBefore },
    { from: middle, to, speed: speedAfter, pull: pullAfter },
  ];
}
