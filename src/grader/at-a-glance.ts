import type { Shape } from '../drafting/shape.ts';
import type { Bounds } from './bounds.ts';
import type { Check } from './exercise.ts';
import { bendsBackBy } from './measures/fairness.ts';

/** What is measured in two ways agrees to far less than this, mm. */
const SURELY = 1e-3;

/** Whether a check holds for an answer by so much that it is seen without the reading itself. False where only that can tell. */
export function holdsAtAGlance(
  check: Check,
  answer: Shape,
  right: Shape,
  { least, most }: Bounds,
  tolerance: number,
): boolean {
  if (check.measure !== 'inflection' || least !== null || most === null) return false;
  if (answer.kind !== 'curve' || right.kind !== 'curve') return false;
  return bendsBackBy(answer.path) + SURELY < most + tolerance;
}
