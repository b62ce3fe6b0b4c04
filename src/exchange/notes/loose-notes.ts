import type { Name } from '../../drafting/step.ts';
import { type Counts, countingOf } from '../class/counting.ts';
import type { CheckRow } from '../grade-row.ts';
import type { HandIn } from '../hand-in.ts';
import { studentKey } from '../student.ts';
import { draftKey } from './draft-key.ts';
import { looseMarks, type TargetMarks, targetMarks } from './noted-marks.ts';
import { type Notes, type OwnMark, UNTOUCHED, withPiece } from './notes.ts';

/** A piece of work on the desk; `checks` are null where it could not be marked. */
export interface NotedPiece {
  readonly handIn: HandIn;
  readonly checks: readonly CheckRow[] | null;
}

/** What a teacher wrote that belongs to nothing that counts, and why. */
export interface LooseNote {
  /** The key of the draft it was written on. */
  readonly key: string;
  readonly handIn: HandIn;
  /** Another draft counts; the exercise has no such target any more; the work could not be marked. */
  readonly why: 'earlier' | 'target' | 'unmarked';
  readonly marks: readonly (readonly [Name, OwnMark])[];
  /** Empty where the comment still belongs, or there is none. */
  readonly comment: string;
}

/** Teacher's marks and comments that count nowhere: kept, and to be told. */
export function looseNotes(pieces: readonly NotedPiece[], { pieces: notes, counts }: Notes): readonly LooseNote[] {
  if (notes.size === 0) return [];
  const counting = new Set(countingKeys(pieces, notes, counts));
  const byKey = new Map(pieces.map((piece) => [draftKey(piece.handIn), piece]));
  return [...notes].flatMap(([key, { marks, comment }]): readonly LooseNote[] => {
    const piece = byKey.get(key);
    // What is written never comes to the desk without its draft, and never stays there without it.
    if (piece === undefined) return [];
    const { handIn, checks } = piece;
    const all = Object.entries(marks);
    if (checks === null) return [{ key, handIn, why: 'unmarked', marks: all, comment }];
    if (!counting.has(key)) return [{ key, handIn, why: 'earlier', marks: all, comment }];
    const loose = looseMarks(checks, { marks, comment });
    return loose.length === 0 ? [] : [{ key, handIn, why: 'target', marks: loose, comment: '' }];
  });
}

function countingKeys(pieces: readonly NotedPiece[], notes: Notes['pieces'], counts: Counts): readonly string[] {
  const keyed = pieces.flatMap(({ handIn, checks }) => {
    if (checks === null) return [];
    const key = draftKey(handIn);
    const earned = targetMarks(checks, notes.get(key) ?? UNTOUCHED).reduce((sum, one) => sum + givenIn(one), 0);
    return [{ student: studentKey(handIn), exercise: handIn.exercise, saved: handIn.saved, key, earned }];
  });
  return countingOf(keyed, counts, ({ earned }) => earned).map(({ key }) => key);
}

/** The teacher's mark, or the grader's where she gave none. */
function givenIn({ own, grader }: TargetMarks): number {
  return own?.marks ?? grader;
}

/**
 * What is written with a loose note handed on to the draft that counts: marks for targets that are worth the same there and
 * have none of the teacher's yet, and the comment where there is none. What does not fit stays where it was.
 */
export function handedOn(notes: Notes, loose: LooseNote, to: NotedPiece): Notes {
  const key = draftKey(to.handIn);
  const there = notes.pieces.get(key) ?? UNTOUCHED;
  const free = targetMarks(to.checks ?? [], there).filter(({ own }) => own === null);
  const fits = loose.marks.filter(([target, mark]) =>
    free.some((one) => one.target === target && Math.abs(one.of - mark.of) < 1e-9),
  );
  const comment = there.comment === '' ? loose.comment : '';
  const given = withPiece(notes, key, (now) => ({
    marks: { ...now.marks, ...Object.fromEntries(fits) },
    comment: now.comment || comment,
  }));
  return withPiece(given, loose.key, (now) => ({
    marks: Object.fromEntries(Object.entries(now.marks).filter(([target]) => !fits.some(([name]) => name === target))),
    comment: comment === '' ? now.comment : '',
  }));
}
