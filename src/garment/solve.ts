import { CONVERGED } from '../geometry/epsilon.ts';

/** Four times what the slowest neckline needs; false position with the safeguard cannot stall longer on a smooth function. */
const STEPS = 60;

/**
 * Where the rising function `f` is zero between `low` and `high`, by false position with the Illinois safeguard
 * (Dowell and Jarratt, BIT 11, 1971): found when `f` is within CONVERGED. Null when the ends do not bracket a zero.
 */
export function solveRising(f: (x: number) => number, low: number, high: number): number | null {
  let [a, b] = [low, high];
  let [fa, fb] = [f(a), f(b)];
  let kept: 'a' | 'b' | null = null;
  // Is there a zero between the ends?
  if (!(fa <= 0 && fb >= 0)) return null;
  for (let step = 0; step < STEPS; step += 1) {
    const x = (a * fb - b * fa) / (fb - fa);
    const fx = f(x);
    if (Math.abs(fx) <= CONVERGED) return x;
    // An end kept twice counts half, so that the line does not hang on it.
    if (fx < 0) {
      if (kept === 'b') fb /= 2;
      [a, fa, kept] = [x, fx, 'b'];
    } else {
      if (kept === 'a') fa /= 2;
      [b, fb, kept] = [x, fx, 'a'];
    }
  }
  return null;
}
