import type { Exercise } from '../grader/exercise.ts';
import { SET_MARKS } from './set.ts';

/** What an exercise is worth in a set that says nothing else: what its own checks are, in whole marks. */
export function usualMarks({ checks }: Exercise): number {
  const marks = checks.reduce((sum, check) => sum + check.marks, 0);
  return Math.min(SET_MARKS, Math.max(1, Math.round(marks)));
}

/** What an exercise earned in a set where it is worth so much: its own marks to the set's scale, not rounded. */
export function scaledMarks(grade: { readonly marks: number; readonly of: number }, worth: number): number {
  return grade.of > 0 ? (grade.marks / grade.of) * worth : 0;
}
