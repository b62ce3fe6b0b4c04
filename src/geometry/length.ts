import type { Cubic, Path } from './cubic.ts';
import { CONVERGED } from './epsilon.ts';

/** Gauss-Legendre nodes and weights for 8 points on -1..1, the positive half (Abramowitz and Stegun, table 25.4). */
const NODES = [0.18343464249564981, 0.525532409916329, 0.7966664774136267, 0.9602898564975363] as const;
const WEIGHTS = [0.362683783378362, 0.3137066458778873, 0.22238103445337448, 0.10122853629037626] as const;

/** The length of the whole path, mm. */
export function lengthOf(path: Path): number {
  let sum = 0;
  for (const piece of path) sum += cubicLength(piece);
  return sum;
}

/**
 * The length of the piece from `t0` to `t1`, mm; negative when `t1 < t0`.
 * The integral of the speed, by Gauss-Legendre, halved until two halves agree with the whole: right to 1e-8 mm also
 * through cusps.
 */
export function cubicLength(c: Cubic, t0 = 0, t1 = 1): number {
  const speed = speedOf(c);
  return halve(speed, t0, t1, gauss(speed, t0, t1), 0);
}

/** The derivative a + b t + c t^2, both coordinates. */
interface Speed {
  readonly ax: number;
  readonly ay: number;
  readonly bx: number;
  readonly by: number;
  readonly cx: number;
  readonly cy: number;
}

function speedOf({ p0, p1, p2, p3 }: Cubic): Speed {
  return {
    ax: 3 * (p1.x - p0.x),
    ay: 3 * (p1.y - p0.y),
    bx: 6 * (p2.x - 2 * p1.x + p0.x),
    by: 6 * (p2.y - 2 * p1.y + p0.y),
    cx: 3 * (p3.x - p0.x + 3 * (p1.x - p2.x)),
    cy: 3 * (p3.y - p0.y + 3 * (p1.y - p2.y)),
  };
}

/** Deep enough for a cusp anywhere: 48 halvings bring a metre below 1e-11 mm. */
const DEEPEST = 48;

function halve(speed: Speed, t0: number, t1: number, whole: number, depth: number): number {
  const middle = 0.5 * (t0 + t1);
  const left = gauss(speed, t0, middle);
  const right = gauss(speed, middle, t1);
  // Written so that NaN ends the halving too.
  if (!(Math.abs(left + right - whole) > CONVERGED) || depth === DEEPEST) return left + right;
  return halve(speed, t0, middle, left, depth + 1) + halve(speed, middle, t1, right, depth + 1);
}

/** The integral of |a + b t + c t^2| from t0 to t1 by 8 points. */
function gauss(speed: Speed, t0: number, t1: number): number {
  const { ax, ay, bx, by, cx, cy } = speed;
  const middle = 0.5 * (t0 + t1);
  const half = 0.5 * (t1 - t0);
  let sum = 0;
  for (let i = 0; i < 4; i++) {
    const reach = half * (NODES[i] as number);
    const u = middle - reach;
    const v = middle + reach;
    const ux = ax + u * (bx + u * cx);
    const uy = ay + u * (by + u * cy);
    const vx = ax + v * (bx + v * cx);
    const vy = ay + v * (by + v * cy);
    sum += (WEIGHTS[i] as number) * (Math.sqrt(ux * ux + uy * uy) + Math.sqrt(vx * vx + vy * vy));
  }
  return sum * half;
}
