import { type Cubic, derivativeAt, pointAt, secondDerivativeAt, straight } from './cubic.ts';
import { unit } from './direction.ts';
import { COINCIDENT, FIT } from './epsilon.ts';
import { type Beside, besideAt } from './parallel.ts';
import { add, distance, dot, norm, type Point, quarterTurn, scale, subtract } from './point.ts';

/** Halvings enough to bring a metre down to rounding. */
const DEEPEST = 44;

/**
 * Cubic pieces for the parallel of `c` at distance `d` from parameter `from` to `to`, a stretch along which it does not turn
 * back. Ends and end directions are exact. Each piece stays within FIT of the true parallel, else it is halved.
 */
export function fitParallel(c: Cubic, d: number, from: number, to: number): Cubic[] {
  const pieces: Cubic[] = [];
  const fit = (t0: number, t1: number, start: Beside, end: Beside, depth: number) => {
    const piece = fitPiece(c, d, t0, t1, start, end);
    if (depth === DEEPEST || within(piece, c, d, t0, t1)) {
      pieces.push(piece);
      return;
    }
    const middle = 0.5 * (t0 + t1);
    const beside = besideAt(c, d, middle);
    if (!beside) return;
    fit(t0, middle, start, beside, depth + 1);
    fit(middle, t1, beside, end, depth + 1);
  };
  const start = besideAt(c, d, from);
  const end = besideAt(c, d, to);
  if (start && end) fit(from, to, start, end, 0);
  return pieces;
}

/**
 * One cubic for a stretch of parallel: Hermite handles to begin with (ends, directions and paces of the parallel), then
 * their lengths bettered so that the piece lies on the true parallel at about one third and two thirds. There the error of
 * a cubic held at both ends, (1 - x^2)^2 (x^2 - c^2), is least at its worst (c^2 = 0.106).
 */
function fitPiece(c: Cubic, d: number, t0: number, t1: number, start: Beside, end: Beside): Cubic {
  const third = (t1 - t0) / 3;
  let alpha = start.pace * third;
  let beta = end.pace * third;
  const first = withHandles(start, end, alpha, beta);
  if (distance(start.point, end.point) <= COINCIDENT) return straight(start.point, end.point);
  for (let i = 0; i < 3; i++) {
    const piece = withHandles(start, end, alpha, beta);
    const [r1, n1] = straying(piece, c, d, t0, t1, SAMPLE);
    const [r2, n2] = straying(piece, c, d, t0, t1, 1 - SAMPLE);
    const near = 3 * (1 - SAMPLE) ** 2 * SAMPLE;
    const far = 3 * (1 - SAMPLE) * SAMPLE ** 2;
    const a1 = near * dot(n1, start.direction);
    const b1 = -far * dot(n1, end.direction);
    const a2 = far * dot(n2, start.direction);
    const b2 = -near * dot(n2, end.direction);
    const turn = a1 * b2 - a2 * b1;
    alpha -= (r1 * b2 - r2 * b1) / turn;
    beta -= (a1 * r2 - a2 * r1) / turn;
  }
  const kept = keeps(alpha, start.pace * third) && keeps(beta, end.pace * third);
  return kept ? withHandles(start, end, alpha, beta) : first;
}

const SAMPLE = 0.5 - Math.sqrt(0.1067) / 2;

/** Handles bettered out of all proportion, as about an inflection where they have no hold, are no better. */
function keeps(bettered: number, plain: number): boolean {
  return bettered >= 0.5 * plain && bettered <= 2 * plain;
}

function withHandles(start: Beside, end: Beside, alpha: number, beta: number): Cubic {
  return {
    p0: start.point,
    p1: add(start.point, scale(start.direction, alpha)),
    p2: subtract(end.point, scale(end.direction, beta)),
    p3: end.point,
  };
}

/** How far the piece strays from the true parallel at `s`, mm to the left, and the left normal there. */
function straying(piece: Cubic, c: Cubic, d: number, t0: number, t1: number, s: number): readonly [number, Point] {
  const p = pointAt(piece, s);
  let t = t0 + (t1 - t0) * s;
  for (let i = 0; i < 4; i++) {
    const reach = subtract(p, pointAt(c, t));
    const speed = derivativeAt(c, t);
    const next = t + dot(reach, speed) / (dot(speed, speed) - dot(reach, secondDerivativeAt(c, t)));
    t = next > t0 && next < t1 ? next : 0.5 * (t + (next <= t0 ? t0 : t1));
  }
  const speed = derivativeAt(c, t);
  const normal = quarterTurn(unit(speed) ?? unit(subtract(c.p3, c.p0)) ?? { x: 1, y: 0 });
  return [dot(subtract(p, pointAt(c, t)), normal) - d, normal];
}

const CHECKS = [0.08, 0.18, 0.5, 0.82, 0.92] as const;

function within(piece: Cubic, c: Cubic, d: number, t0: number, t1: number): boolean {
  if (norm(subtract(piece.p3, piece.p0)) <= COINCIDENT) return true;
  return CHECKS.every((s) => Math.abs(straying(piece, c, d, t0, t1, s)[0]) <= 0.5 * FIT);
}
