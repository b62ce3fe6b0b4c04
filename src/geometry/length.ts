import type { Cubic, Path } from './cubic.ts';
import { CONVERGED } from './epsilon.ts';
import { hypotenuse } from './point.ts';
import { signChanges } from './polynomial.ts';
import { spend } from './work.ts';

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
 * The length of the piece from `t0` to `t1`, mm; negative when `t1 < t0`. Right to 1e-7 mm, through cusps too.
 * The integral of the speed, by Gauss-Legendre, halved until two halves agree with the whole. Near a standstill that
 * agreement proves nothing: where the speed falls to e within a stretch far wider than e, whole and halves leave out the
 * same e^2 log e. So there the stretch is first cut where the speed is least or greatest, and graded toward the cuts.
 */
export function cubicLength(c: Cubic, t0 = 0, t1 = 1): number {
  if (t1 < t0) return -cubicLength(c, t1, t0);
  setSpeed(c);
  if (isBrisk(c)) return agreed(t0, t1);
  let sum = 0;
  let from = t0;
  for (const t of speedTurns()) {
    if (t <= t0 || t >= t1) continue;
    sum += gradedBothWays(from, t);
    from = t;
  }
  return sum + gradedBothWays(from, t1);
}

/** How much slower than at its fastest, by the bounds below, a brisk piece may be, squared. */
const SLOW = 1 / 64;

/**
 * Whether the piece never nearly stands still. The squares of its speed lie between the least and the greatest of their
 * Bernstein coefficients; those of the two halves bound it more closely.
 */
function isBrisk({ p0, p1, p2, p3 }: Cubic): boolean {
  const ux = p1.x - p0.x;
  const uy = p1.y - p0.y;
  const vx = p2.x - p1.x;
  const vy = p2.y - p1.y;
  const wx = p3.x - p2.x;
  const wy = p3.y - p2.y;
  const b0 = ux * ux + uy * uy;
  const b1 = ux * vx + uy * vy;
  const b2 = (2 * (vx * vx + vy * vy) + ux * wx + uy * wy) / 3;
  const b3 = vx * wx + vy * wy;
  const b4 = wx * wx + wy * wy;
  const least = SLOW * Math.max(b0, b1, b2, b3, b4);
  if (Math.min(b0, b1, b2, b3, b4) > least) return true;
  // De Casteljau's construction at the middle.
  const c0 = 0.5 * (b0 + b1);
  const c1 = 0.5 * (b1 + b2);
  const c2 = 0.5 * (b2 + b3);
  const c3 = 0.5 * (b3 + b4);
  const d0 = 0.5 * (c0 + c1);
  const d1 = 0.5 * (c1 + c2);
  const d2 = 0.5 * (c2 + c3);
  const e0 = 0.5 * (d0 + d1);
  const e1 = 0.5 * (d1 + d2);
  return Math.min(b0, c0, d0, e0, 0.5 * (e0 + e1), e1, d2, c3, b4) > least;
}

function gradedBothWays(t0: number, t1: number): number {
  const middle = 0.5 * (t0 + t1);
  return graded(t0, middle) - graded(t1, middle);
}

/** From `slow`, where the piece may nearly stand still, to `to`: in stretches each a quarter as long as the last, down to where the speed no longer falls or what is left is nothing. */
function graded(slow: number, to: number): number {
  let sum = 0;
  let far = to;
  const least = speedAt(slow);
  while (speedAt(far) > 2 * least && Math.abs(far - slow) * speedAt(far) > 0.01 * CONVERGED) {
    const near = slow + 0.25 * (far - slow);
    sum += agreed(near, far);
    far = near;
  }
  return sum + agreed(slow, far);
}

function speedAt(t: number): number {
  const [ax, ay, bx, by, cx, cy] = speed as unknown as Speed;
  return hypotenuse(ax + t * (bx + t * cx), ay + t * (by + t * cy));
}

function agreed(t0: number, t1: number): number {
  return halve(t0, t1, gauss(t0, t1), 0);
}

type Speed = readonly [number, number, number, number, number, number];

/** The derivative a + b t + c t^2 of the piece that is measured: ax, ay, bx, by, cx, cy. Kept here so that the innermost loops hand down no object. */
const speed = new Float64Array(6);

function setSpeed({ p0, p1, p2, p3 }: Cubic): void {
  speed[0] = 3 * (p1.x - p0.x);
  speed[1] = 3 * (p1.y - p0.y);
  speed[2] = 6 * (p2.x - 2 * p1.x + p0.x);
  speed[3] = 6 * (p2.y - 2 * p1.y + p0.y);
  speed[4] = 3 * (p3.x - p0.x + 3 * (p1.x - p2.x));
  speed[5] = 3 * (p3.y - p0.y + 3 * (p1.y - p2.y));
}

const turns = new Float64Array(4);

/** The parameters at which the speed is least or greatest: where B' . B'', a cubic, changes sign. */
function speedTurns(): number[] {
  const [ax, ay, bx, by, cx, cy] = speed as unknown as Speed;
  const slope = [
    ax * bx + ay * by,
    bx * bx + by * by + 2 * (ax * cx + ay * cy),
    3 * (bx * cx + by * cy),
    2 * (cx * cx + cy * cy),
  ];
  return [...turns.subarray(0, signChanges(slope, 3, turns))];
}

/** Deep enough for a cusp anywhere: 48 halvings bring a metre below 1e-11 mm. */
const DEEPEST = 48;

function halve(t0: number, t1: number, whole: number, depth: number): number {
  const middle = 0.5 * (t0 + t1);
  const left = gauss(t0, middle);
  const right = gauss(middle, t1);
  // Written so that NaN ends the halving too.
  if (!(Math.abs(left + right - whole) > CONVERGED) || depth === DEEPEST) return left + right;
  return halve(t0, middle, left, depth + 1) + halve(middle, t1, right, depth + 1);
}

/** The integral of |a + b t + c t^2| from t0 to t1 by 8 points. */
function gauss(t0: number, t1: number): number {
  spend(1 / 4);
  const ax = speed[0] as number;
  const ay = speed[1] as number;
  const bx = speed[2] as number;
  const by = speed[3] as number;
  const cx = speed[4] as number;
  const cy = speed[5] as number;
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
