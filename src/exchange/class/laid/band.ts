import type { Name } from '../../../drafting/step.ts';
import { isAllAlong } from '../../../grader/all-along.ts';
import type { Check, Exercise, MeasureName } from '../../../grader/exercise.ts';
import { type Strictness, toleranceOf } from '../../../grader/tolerance.ts';

/**
 * Half the width of the chalk about a right answer, mm: the tolerance of the narrowest check that holds all along it. Null where
 * none does: of a curve whose checks look at single places, and where a range is allowed and the reference is one answer of many.
 */
export function bandOf({ checks }: Exercise, target: Name, strictness: Strictness): number | null {
  const own = checks.filter((check) => check.target === target);
  if (own.some(isRanged)) return null;
  const halves = own.filter(isAllAlong).map(({ tolerance }) => toleranceOf(tolerance, strictness, 'mm'));
  return halves.length === 0 ? null : Math.min(...halves);
}

/** How near a curve passes a point, and how quietly it runs, are ranges only in name: they begin at nothing, which every right answer is near. */
const nominal: readonly MeasureName[] = ['through', 'inflection', 'bend'];

/** Whether a check leaves a range, in which the reference's own answer is one of many. */
export function isRanged({ measure, least, most }: Check): boolean {
  return !nominal.includes(measure) && (least !== undefined || most !== undefined);
}
