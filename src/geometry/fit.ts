import { arcPath } from './arc.ts';
import { type Cubic, derivativeAt, pointAt, secondDerivativeAt, straight, subCubic } from './cubic.ts';
import { turnBetween, unit } from './direction.ts';
import { COINCIDENT, FAR_OFF, FIT } from './epsilon.ts';
import { type Beside, besideAt } from './parallel.ts';
import { add, distance, dot, type Point, quarterTurn, scale, subtract } from './point.ts';
import { spend } from './work.ts';

/** A stretch of the parallel of `c` at distance `d` (left positive), with its ends worked out. */
interface Task {
  readonly c: Cubic;
  readonly d: number;
  readonly from: number;
  readonly to: number;
  readonly start: Beside;
  readonly end: Beside;
}

/** What fitting one piece costs, beside a look. */
const FITTING = 8;

/** Halvings enough to bring a metre down to rounding. */
const DEEPEST = 44;

/**
 * Cubic pieces for the parallel of `c` at distance `d` from parameter `from` to `to`, a stretch along which it does not turn
 * back. Ends and end directions are exact. Each piece stays within FIT of the true parallel, else it is halved.
 */
export function fitParallel(c: Cubic, d: number, from: number, to: number): Cubic[] {
  const start = besideAt(c, d, from);
  const end = besideAt(c, d, to);
  return start && end ? fitTask({ c, d, from, to, start, end }, 0) : [];
}

function fitTask(task: Task, depth: number): Cubic[] {
  if (isSpot(subCubic(task.c, task.from, task.to))) return roundSpot(task);
  const piece = fitPiece(task);
  if (depth === DEEPEST || isWithin(piece, task)) return [piece];
  const middle = 0.5 * (task.from + task.to);
  const beside = besideAt(task.c, task.d, middle);
  if (!beside) return [piece];
  return [
    ...fitTask({ ...task, to: middle, end: beside }, depth + 1),
    ...fitTask({ ...task, from: middle, start: beside }, depth + 1),
  ];
}

/** Whether the piece is no larger than COINCIDENT, handles included. */
function isSpot({ p0, p1, p2, p3 }: Cubic): boolean {
  return distance(p0, p1) + distance(p1, p2) + distance(p2, p3) <= COINCIDENT;
}

/** The parallel of a spot that turns, such as the tip of a near cusp: an arc about it. Its direction is lost to rounding inside. */
function roundSpot({ c, d, to, start, end }: Task): Cubic[] {
  const aside = scale(quarterTurn(start.direction), Math.sign(d));
  const sweep = turnBetween(start.direction, end.direction);
  return [...arcPath(pointAt(c, to), Math.abs(d), Math.atan2(aside.y, aside.x), sweep)];
}

/** Where a cubic held at both ends is laid on the true parallel: its error, (1 - x^2)^2 (x^2 - 0.1067), is then least at its worst. */
const SAMPLE = 0.5 - Math.sqrt(0.1067) / 2;

/** How much each handle moves the curve at the sample nearer to it, and at the one further off. */
const NEAR = 3 * (1 - SAMPLE) ** 2 * SAMPLE;
const FAR = 3 * (1 - SAMPLE) * SAMPLE ** 2;

/** Measured: of 1e-2 to 1e-8 this makes the fewest pieces. A share of the normal equations' trace, no length. */
const DAMPING = 1e-6;

/**
 * One cubic for a stretch of parallel: Hermite handles to begin with (ends, directions and paces of the parallel), then
 * their lengths bettered so that the piece lies on the true parallel at about one third and two thirds.
 */
function fitPiece(task: Task): Cubic {
  spend(FITTING);
  const { start, end } = task;
  if (distance(start.point, end.point) <= COINCIDENT) return straight(start.point, end.point);
  const third = (task.to - task.from) / 3;
  let alpha = start.pace * third;
  let beta = end.pace * third;
  for (let i = 0; i < 4; i++) {
    const [dAlpha, dBeta] = bettering(withHandles(task, alpha, beta), task);
    alpha -= dAlpha;
    beta -= dBeta;
  }
  const kept = keeps(alpha, start.pace * third) && keeps(beta, end.pace * third);
  return kept ? withHandles(task, alpha, beta) : withHandles(task, start.pace * third, end.pace * third);
}

/**
 * By how much the handles are too long. Gauss-Newton, damped a little: on a short stretch both handles push alike, and the
 * difference of their lengths has no hold.
 */
function bettering(piece: Cubic, task: Task): readonly [number, number] {
  const near = straying(piece, task, SAMPLE);
  const far = straying(piece, task, 1 - SAMPLE);
  const a1 = NEAR * dot(near.normal, task.start.direction);
  const b1 = -FAR * dot(near.normal, task.end.direction);
  const a2 = FAR * dot(far.normal, task.start.direction);
  const b2 = -NEAR * dot(far.normal, task.end.direction);
  const damp = DAMPING * (a1 * a1 + a2 * a2 + b1 * b1 + b2 * b2);
  const aa = a1 * a1 + a2 * a2 + damp;
  const bb = b1 * b1 + b2 * b2 + damp;
  const ab = a1 * b1 + a2 * b2;
  const ra = a1 * near.off + a2 * far.off;
  const rb = b1 * near.off + b2 * far.off;
  const turn = aa * bb - ab * ab;
  return [(ra * bb - rb * ab) / turn, (rb * aa - ra * ab) / turn];
}

/** Handles bettered out of all proportion, as about an inflection where they have no hold, are no better. */
function keeps(bettered: number, plain: number): boolean {
  return bettered >= 0.5 * plain && bettered <= 2 * plain;
}

function withHandles({ start, end }: Task, alpha: number, beta: number): Cubic {
  return {
    p0: start.point,
    p1: add(start.point, scale(start.direction, alpha)),
    p2: subtract(end.point, scale(end.direction, beta)),
    p3: end.point,
  };
}

/** How far the piece strays from the true parallel at `s`, mm to the left, and the left normal there. */
function straying(piece: Cubic, { c, d, from, to }: Task, s: number): { off: number; normal: Point } {
  const p = pointAt(piece, s);
  let t = from + (to - from) * s;
  for (let i = 0; i < 4; i++) {
    const reach = subtract(p, pointAt(c, t));
    const speed = derivativeAt(c, t);
    const next = t + dot(reach, speed) / (dot(speed, speed) - dot(reach, secondDerivativeAt(c, t)));
    t = next > from && next < to ? next : 0.5 * (t + (next <= from ? from : to));
  }
  const normal = quarterTurn(unit(derivativeAt(c, t)) ?? unit(subtract(c.p3, c.p0)) ?? { x: 1, y: 0 });
  return { off: dot(subtract(p, pointAt(c, t)), normal) - d, normal };
}

/** Between the places where the error vanishes, about where it is worst. */
const CHECKS = [0.08, 0.18, 0.5, 0.82, 0.92] as const;

function isWithin(piece: Cubic, task: Task): boolean {
  if (distance(piece.p0, piece.p3) <= COINCIDENT) return true;
  const room = 0.5 * FIT * Math.max(1, Math.abs(task.d) / FAR_OFF);
  return CHECKS.every((s) => Math.abs(straying(piece, task, s).off) <= room);
}
