import type { Name } from '../../drafting/step.ts';
import type { MeasureName } from '../../grader/exercise.ts';
import type { Status } from '../../grader/result.ts';
import type { WorkRow } from '../grade-row.ts';
import { type Student, studentKey } from '../student.ts';
import type { FreeHand } from './alike/free-hand.ts';

/** As much of a marked piece of work as is kept to say something of a class. */
export interface ClassWork {
  /** By what the student is known among others. */
  readonly student: string;
  readonly who: Student;
  readonly exercise: Name;
  /** When it was saved; null where that is not told. */
  readonly saved: string | null;
  /** What it earned of what could be earned, 0 to 1. */
  readonly share: number;
  readonly checks: readonly {
    readonly target: Name;
    readonly check: MeasureName;
    readonly share: number;
    readonly status: Status;
    readonly misreading: string | null;
  }[];
  /** What of it came from the student's own hand; null where that is too little to ask about. */
  readonly freeHand: FreeHand | null;
}

export function classWorkOf(row: WorkRow, freeHand: FreeHand | null): ClassWork {
  const { student, number } = row;
  return {
    student: studentKey(row),
    who: { student, number },
    exercise: row.exercise,
    saved: row.saved,
    share: row.of > 0 ? row.marks / row.of : 0,
    checks: row.checks.map(({ target, check, marks, of, status, misreading }) => ({
      target,
      check,
      share: of > 0 ? marks / of : 0,
      status,
      misreading,
    })),
    freeHand,
  };
}

/**
 * Of work handed in more than once, what was saved last; where that is not told, what was found last. What is dated is held
 * against the last date there was, also where a piece without one has come between.
 */
export function latestOf<W extends Pick<ClassWork, 'student' | 'exercise' | 'saved'>>(work: Iterable<W>): readonly W[] {
  const latest = new Map<string, { readonly one: W; readonly saved: string | null }>();
  for (const one of work) {
    const key = JSON.stringify([one.student, one.exercise]);
    const before = latest.get(key)?.saved ?? null;
    if (!isEarlier(one.saved, before)) latest.set(key, { one, saved: one.saved ?? before });
  }
  return [...latest.values()].map(({ one }) => one);
}

function isEarlier(one: string | null, other: string | null): boolean {
  return one !== null && other !== null && Date.parse(one) < Date.parse(other);
}
