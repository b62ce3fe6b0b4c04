import type { Name } from '../../drafting/step.ts';
import type { Entry } from '../class/gradebook.ts';
import type { CheckRow, WorkRow } from '../grade-row.ts';
import { scaledMarks } from '../set-marks.ts';
import type { OwnMark, PieceNotes } from './notes.ts';

/** The marks of one target: the grader's, and the teacher's where there is one. In the marks of the exercise. */
export interface TargetMarks {
  readonly target: Name;
  readonly grader: number;
  readonly of: number;
  readonly own: OwnMark | null;
}

/** The marks of a piece of work, target by target, in the order in which they are judged. */
export function targetMarks(checks: readonly CheckRow[], { marks }: PieceNotes): readonly TargetMarks[] {
  return [...Map.groupBy(checks, ({ target }) => target)].map(([target, all]) => {
    const of = sumOf(all.map((check) => check.of));
    const own = Object.hasOwn(marks, target) ? marks[target] : undefined;
    return { target, grader: sumOf(all.map((check) => check.marks)), of, own: own && fits(own, of) ? own : null };
  });
}

/** Teacher's marks of a piece that belong to none of its targets any more. */
export function looseMarks(checks: readonly CheckRow[], notes: PieceNotes): readonly (readonly [Name, OwnMark])[] {
  const held = targetMarks(checks, notes).filter(({ own }) => own !== null);
  return Object.entries(notes.marks).filter(([target]) => !held.some((one) => one.target === target));
}

/** Rounding aside, the target is worth what it was worth then. */
function fits(own: OwnMark, of: number): boolean {
  return Math.abs(own.of - of) < 1e-9;
}

/** What a piece comes to with the teacher's marks, in the marks of the exercise; null where none of the grader's was changed. */
export function ownTotal(checks: readonly CheckRow[], notes: PieceNotes): number | null {
  const targets = targetMarks(checks, notes);
  if (targets.every(({ own }) => own === null)) return null;
  return sumOf(targets.map(({ own, grader }) => own?.marks ?? grader));
}

/** The gradebook's entry with the teacher's marks; the very one where none was changed. */
export function notedEntry(entry: Entry, row: WorkRow, notes: PieceNotes): Entry {
  const total = ownTotal(row.checks, notes);
  if (total === null) return entry;
  const marks = row.inSet === null ? total : scaledMarks({ marks: total, of: row.of }, row.inSet.of);
  return { ...entry, marks, grader: entry.marks };
}

function sumOf(numbers: readonly number[]): number {
  return numbers.reduce((sum, one) => sum + one, 0);
}
