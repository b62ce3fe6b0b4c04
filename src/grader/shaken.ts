import { evaluate } from '../drafting/expression.ts';
import type { Expression } from '../drafting/step.ts';
import { type Figure, figureMeasures } from '../garment/figure.ts';
import { chanceOf } from '../garment/seed.ts';
import { add, type Point, point } from '../geometry/point.ts';

/** Steps of a shake to each side; a place in the square round the mark is drawn until it lies in the circle. */
const FINE = 1000;

/** A mark as an unsteady hand would make it: moved up to `by` any way, always the same for the same seed and figure. */
export function shakenPoint(at: Point, by: Expression, seed: string, figure: Figure): Point {
  const most = evaluate(by, new Map());
  if (!most.ok) return at;
  const chance = chanceOf(`shaken/${seed}/${figureMeasures.map((name) => figure[name]).join('/')}`);
  for (;;) {
    const [x, y] = [chance.whole(-FINE, FINE), chance.whole(-FINE, FINE)];
    if (x * x + y * y > FINE * FINE) continue;
    const part = most.quantity.value / FINE;
    return add(at, point(x * part, y * part));
  }
}
