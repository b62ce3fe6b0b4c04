import type { Name } from '../../../drafting/step.ts';
import type { Check, Exercise } from '../../../grader/exercise.ts';
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

/** Whether a check leaves a range, in which the reference's own answer is one of many. */
export function isRanged({ measure, least, most }: Check): boolean {
  // How near a curve passes a point is a range only in name: it begins at nothing.
  return measure !== 'through' && (least !== undefined || most !== undefined);
}

function isAllAlong({ measure }: Check): boolean {
  switch (measure) {
    case 'position':
    case 'distance':
    case 'level':
    case 'line':
    case 'parallel':
    case 'shape':
      return true;
    default:
      return false;
  }
}
