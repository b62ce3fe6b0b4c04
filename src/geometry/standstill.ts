import { type Cubic, derivativeAt } from './cubic.ts';
import { COINCIDENT } from './epsilon.ts';
import { norm } from './point.ts';
import { signChanges } from './polynomial.ts';
import { powerOf } from './power.ts';

const roots = new Float64Array(4);

/** The parameters inside the piece where it stands still, a cusp or a straight turning back: the speed is below COINCIDENT. */
export function standstills(c: Cubic): number[] {
  const { x1, x2, x3, y1, y2, y3 } = powerOf(c);
  // The slope of |B'|^2 / 2: B' . B''.
  const slope = [
    2 * (x1 * x2 + y1 * y2),
    6 * (x1 * x3 + y1 * y3) + 4 * (x2 * x2 + y2 * y2),
    18 * (x2 * x3 + y2 * y3),
    18 * (x3 * x3 + y3 * y3),
  ];
  const count = signChanges(slope, 3, roots);
  return [...roots.subarray(0, count)].filter((t) => norm(derivativeAt(c, t)) <= COINCIDENT);
}
