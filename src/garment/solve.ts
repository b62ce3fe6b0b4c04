import { CONVERGED } from '../geometry/epsilon.ts';

/** The necklines of the accepted range take at most 5. */
const STEPS = 60;

/**
 * Where the rising function `f` is zero between `low` and `high`, by false position with the Illinois safeguard
 * (Dowell and Jarratt, BIT 11, 1971): found when `f` is within CONVERGED. Null when the ends do not bracket a zero.
 */
export function solveRising(f: (x: number) => number, low: number, high: number): number | null {
  let [a, b] = [low, high];
  let [fa, fb] = [f(a), f(b)];
  // Is there a zero between the ends?
  if (!(fa <= 0 && fb >= 0)) return null;
  for (let step = 0; step < STEPS; step += 1) {
    const x = (a * fb - b * fa) / (fb - fa);
    const fx = f(x);
    if (Math.abs(fx) <= CONVERGED) return x;
    // b is the newest place, a the one across the zero from it. Where a is kept it counts half, or the line would hang on it.
    [a, fa] = fx * fb < 0 ? [b, fb] : [a, fa / 2];
    [b, fb] = [x, fx];
  }
  return null;
}
