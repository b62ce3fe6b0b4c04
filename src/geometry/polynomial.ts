import { PARAMETER } from './epsilon.ts';
import { spend } from './work.ts';

/** Coefficients, the constant first; at least degree + 1 of them. */
export type Coefficients = ArrayLike<number>;

const HIGHEST = 6;

// Work space, one row a degree: root finding runs in the innermost loops and must not allocate.
const ladder = Array.from({ length: HIGHEST + 1 }, () => new Float64Array(HIGHEST + 1));
const found = Array.from({ length: HIGHEST + 1 }, () => new Float64Array(HIGHEST + 1));

/** The value at `t` (Horner). */
export function polynomialAt(p: Coefficients, degree: number, t: number): number {
  let value = 0;
  for (let i = degree; i >= 0; i--) value = value * t + (p[i] as number);
  return value;
}

/**
 * Every place strictly between 0 and 1 where the polynomial changes sign, ascending, written to `out`; returns how many.
 * Degree at most 6. None can be missed: between neighbouring roots of the derivative a polynomial is monotone, so the
 * roots of each derivative in turn, from the quadratic up, bracket those of the next. Places where it only touches zero
 * are not reported (`zerosOf` reports them).
 */
export function signChanges(p: Coefficients, degree: number, out: Float64Array): number {
  if (degree <= 2) return quadraticSignChanges(p[0] ?? 0, p[1] ?? 0, degree === 2 ? (p[2] ?? 0) : 0, out);
  spend(1);
  differentiate(p, degree);
  const base = ladder[2] as Float64Array;
  let knots = found[2] as Float64Array;
  let count = quadraticSignChanges(base[0] as number, base[1] as number, base[2] as number, knots);
  for (let k = 3; k <= degree; k++) {
    const next = k === degree ? out : (found[k] as Float64Array);
    count = changesBetween(ladder[k] as Float64Array, k, knots, count, next);
    knots = next;
  }
  return count;
}

/** Fills the ladder with the polynomial and its derivatives down to the quadratic one, each on the row of its degree. */
function differentiate(p: Coefficients, degree: number): void {
  const top = ladder[degree] as Float64Array;
  for (let i = 0; i <= degree; i++) top[i] = p[i] as number;
  for (let k = degree; k > 2; k--) {
    const upper = ladder[k] as Float64Array;
    const lower = ladder[k - 1] as Float64Array;
    for (let i = 1; i <= k; i++) lower[i - 1] = i * (upper[i] as number);
  }
}

/** Sign changes of c + b t + a t^2 inside 0..1, by the form of the quadratic formula that does not cancel. */
function quadraticSignChanges(c: number, b: number, a: number, out: Float64Array): number {
  const discriminant = b * b - 4 * a * c;
  if (!(discriminant > 0)) return 0;
  const q = -0.5 * (b + (b < 0 ? -1 : 1) * Math.sqrt(discriminant));
  const one = Math.min(q / a, c / q);
  const other = Math.max(q / a, c / q);
  let count = 0;
  if (one > 0 && one < 1) out[count++] = one;
  if (other > 0 && other < 1) out[count++] = other;
  return count;
}

/** Sign changes of a polynomial that is monotone between its knots. */
function changesBetween(
  p: Float64Array,
  degree: number,
  knots: Float64Array,
  knotCount: number,
  out: Float64Array,
): number {
  let count = 0;
  let from = 0;
  let atFrom = polynomialAt(p, degree, 0);
  for (let i = 0; i <= knotCount; i++) {
    const to = i < knotCount ? (knots[i] as number) : 1;
    const atTo = polynomialAt(p, degree, to);
    if (atTo === 0) continue;
    if (atFrom < 0 !== atTo < 0 && atFrom !== 0) out[count++] = bracketedRoot(p, degree, from, to, atFrom);
    from = to;
    atFrom = atTo;
  }
  return count;
}

/** The root between `low` and `high`, where the signs differ: Newton's step while it stays in the bracket, else halving. */
export function bracketedRoot(p: Coefficients, degree: number, low: number, high: number, atLow: number): number {
  let a = low;
  let b = high;
  let t = 0.5 * (a + b);
  for (let i = 0; i < 80; i++) {
    let value = 0;
    let slope = 0;
    for (let k = degree; k >= 0; k--) {
      slope = slope * t + value;
      value = value * t + (p[k] as number);
    }
    if (value === 0) return t;
    if (value < 0 === atLow < 0) a = t;
    else b = t;
    let next = t - value / slope;
    if (!(next > a && next < b)) next = 0.5 * (a + b);
    if (Math.abs(next - t) <= PARAMETER) return next;
    t = next;
  }
  return t;
}

/**
 * Where the polynomial is zero on 0..1, ends included, counting places where it only comes within `touch` of zero.
 * Null when it stays within `touch` all along. Ascending. May allocate: not for the innermost loops.
 */
export function zerosOf(p: Coefficients, degree: number, touch: number): number[] | null {
  const knots = turningPoints(p, degree);
  const values = knots.map((t) => polynomialAt(p, degree, t));
  if (values.every((value) => Math.abs(value) <= touch)) return null;
  const zeros: number[] = [];
  for (const [i, t] of knots.entries()) {
    const value = values[i] as number;
    const before = i > 0 ? (values[i - 1] as number) : value;
    const after = values[i + 1] ?? value;
    const beforeCrosses = before * value < 0;
    const touches = Math.abs(value) <= touch && !beforeCrosses && !(value * after < 0);
    const alreadyTouching = i > 0 && Math.abs(before) <= touch && zeros.at(-1) === knots[i - 1];
    if (beforeCrosses) zeros.push(bracketedRoot(p, degree, knots[i - 1] as number, t, before));
    if (touches && !alreadyTouching) zeros.push(t);
  }
  return zeros;
}

const scratch = new Float64Array(HIGHEST + 1);

/** 0, the places where the polynomial turns, and 1: between neighbours it is monotone. */
function turningPoints(p: Coefficients, degree: number): number[] {
  const slope: number[] = [];
  for (let i = 1; i <= degree; i++) slope.push(i * (p[i] as number));
  const count = signChanges(slope, degree - 1, scratch);
  return [0, ...scratch.subarray(0, count), 1];
}
