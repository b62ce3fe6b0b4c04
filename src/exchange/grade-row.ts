import type { Name } from '../drafting/step.ts';
import type { CheckResult, Grade } from '../grader/result.ts';
import type { Strictness } from '../grader/tolerance.ts';
import { say } from '../words/say.ts';
import type { HandIn, HintTier } from './hand-in.ts';
import type { MarkedWork } from './mark-work.ts';
import { isOwnOrder } from './own-order.ts';
import type { Remark } from './remarks.ts';
import type { ProblemSet } from './set.ts';
import { scaledMarks } from './set-marks.ts';
import { dealtTo } from './set-order.ts';
import { setMark } from './write-set.ts';

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
    set: handIn.set?.title ?? null,
    exercise: grade.exercise,
    marks: grade.marks,
    of: grade.of,
    problems: grade.problems.map((problem) => say(problem, reader)),
    checks: grade.checks.map(checkRow),
    otherFigures: { tried: grade.otherFigures.tried, held: grade.otherFigures.held },
  };
}

/** A row of the gradebook with where it was found and how it was come by: what a teacher goes by, after what programs read. */
export interface WorkRow extends GradeRow {
  /** Where the work was found: a file, and its line where the file holds several pieces. */
  readonly file: string;
  /** The student's number; may be empty. */
  readonly number: string;
  /** The strictness it was marked by. */
  readonly strictness: Strictness;
  /** Targets whose right place was asked for. */
  readonly shown: readonly Name[];
  /** How many of a target's hints were taken. */
  readonly hints: Readonly<Record<Name, HintTier>>;
  /** How often the draft was checked. */
  readonly checked: number;
  /** When its first step was drawn, and when it was saved; ISO 8601, null where that is not told. */
  readonly begun: string | null;
  readonly saved: string | null;
  /** Whether it was drawn on the exercise's own order, or on one that was changed. */
  readonly ownOrder: boolean;
  /** The house rules it was marked by, of those that the exercise knows. */
  readonly house: Readonly<Record<string, string>>;
  /** Null where it was marked by itself. */
  readonly inSet: SetRow | null;
}

/** What a piece of work comes to in a set. */
export interface SetRow {
  readonly id: string;
  /** What it earned, scaled to what the set says it is worth; 0 of 0 where it is not in the set. */
  readonly marks: number;
  readonly of: number;
  readonly remarks: readonly Remark[];
  /** By what the student is known to whom the set dealt the figure it was drawn on; null where it dealt that to nobody in particular. */
  readonly figureOf: string | null;
}

/** The whole row of a hand-in that was found in a file, marked by itself or in a set. */
export function workRow(
  file: string,
  { handIn, exercise, grade, remarks }: MarkedWork,
  set: ProblemSet | null,
): WorkRow {
  const { number, shown, hints, checks, begun, saved } = handIn;
  const house = Object.fromEntries(
    Object.entries(exercise.house).map(([rule, choice]) => [rule, handIn.order.house[rule] ?? choice]),
  );
  return {
    ...gradeRow(handIn, grade),
    file,
    number,
    strictness: grade.strictness,
    shown,
    hints,
    checked: checks,
    begun,
    saved,
    ownOrder: isOwnOrder(handIn, exercise),
    house,
    inSet:
      set === null
        ? null
        : { id: setMark(set).id, ...setMarks(set, grade), remarks, figureOf: dealtTo(set, handIn.order.figure) },
  };
}

function setMarks(set: ProblemSet, grade: Grade): { readonly marks: number; readonly of: number } {
  const worth = set.exercises.find(({ exercise }) => exercise === grade.exercise)?.marks ?? 0;
  return { marks: scaledMarks(grade, worth), of: worth };
}

function checkRow(result: CheckResult): CheckRow {
  const { target, check, status, measured, expected, off, tolerance, unit, marks, of, carried, misreading } = result;
  return { target, check, status, measured, expected, off, tolerance, unit, marks, of, carried, misreading };
}
