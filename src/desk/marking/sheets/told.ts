import type { Name } from '../../../drafting/step.ts';
import type { CheckRow } from '../../../exchange/grade-row.ts';
import { type TargetMarks, targetMarks } from '../../../exchange/notes/noted-marks.ts';
import type { PieceNotes } from '../../../exchange/notes/notes.ts';
import type { Grade, TargetReport } from '../../../grader/result.ts';

/** What is told of one target at some length. */
export interface ToldTarget {
  readonly report: TargetReport;
  /** Null where nothing is earned by it. */
  readonly marks: TargetMarks | null;
}

/** What is told of a piece of work: first what went right, then what is off, in the order in which it was judged. */
export interface Told {
  readonly right: readonly Name[];
  /** Targets that are off, and those for which the teacher gave another mark. */
  readonly notes: readonly ToldTarget[];
}

export function toldOf({ reports }: Pick<Grade, 'reports'>, checks: readonly CheckRow[], notes: PieceNotes): Told {
  const marks = new Map(targetMarks(checks, notes).map((one) => [one.target, one]));
  const told = reports.map((report): ToldTarget => ({ report, marks: marks.get(report.target) ?? null }));
  return {
    right: reports.filter(({ status }) => status === 'within').map(({ target }) => target),
    notes: told.filter(({ report, marks: given }) => report.status !== 'within' || (given?.own ?? null) !== null),
  };
}
