import type { CheckResult, Grade } from '../grader/result.ts';
import { say } from '../words/say.ts';
import type { HandIn } from './hand-in.ts';

/** One check of a piece of work, as programs read it. */
export type CheckRow = Pick<
  CheckResult,
  | 'target'
  | 'check'
  | 'status'
  | 'measured'
  | 'expected'
  | 'off'
  | 'tolerance'
  | 'unit'
  | 'marks'
  | 'of'
  | 'carried'
  | 'misreading'
>;

/** A marked piece of work, one row of a gradebook: nothing in it is rounded. */
export interface GradeRow {
  readonly student: string;
  readonly set: string | null;
  readonly exercise: string;
  readonly marks: number;
  readonly of: number;
  /** Steps that could not be carried out, in words. */
  readonly problems: readonly string[];
  readonly checks: readonly CheckRow[];
  readonly otherFigures: { readonly tried: number; readonly held: number };
}

/** The row of a hand-in that was marked; sentences are in English and in the student's unit. */
export function gradeRow(handIn: HandIn, grade: Grade): GradeRow {
  const reader = { language: 'en', unit: handIn.unit };
  return {
    student: handIn.student,
    set: handIn.set,
    exercise: grade.exercise,
    marks: grade.marks,
    of: grade.of,
    problems: grade.problems.map((problem) => say(problem, reader)),
    checks: grade.checks.map(checkRow),
    otherFigures: { tried: grade.otherFigures.tried, held: grade.otherFigures.held },
  };
}

function checkRow(result: CheckResult): CheckRow {
  const { target, check, status, measured, expected, off, tolerance, unit, marks, of, carried, misreading } = result;
  return { target, check, status, measured, expected, off, tolerance, unit, marks, of, carried, misreading };
}
