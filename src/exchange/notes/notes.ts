import type { Name } from '../../drafting/step.ts';
import type { Counts } from '../class/counting.ts';
import { type Student, studentKey } from '../student.ts';

/** A mark that a teacher gave for a target in place of the grader's. */
export interface OwnMark {
  /** In the marks of the exercise, 0 to `of`. */
  readonly marks: number;
  /** What the target was worth when the mark was given. A target that is worth something else by now is another. */
  readonly of: number;
  /** Never empty. */
  readonly reason: string;
}

/** What a teacher wrote on one piece of work. */
export interface PieceNotes {
  readonly marks: Readonly<Record<Name, OwnMark>>;
  /** Plain text; may be empty. */
  readonly comment: string;
}

/** What a teacher wrote to one student about everything, and the time given to that student. */
export interface StudentNote extends Student {
  /** Plain text; may be empty. */
  readonly comment: string;
  /** To when the student has more time than the set gives; ISO 8601, null where no time was given. */
  readonly until: string | null;
}

/** Everything a teacher wrote on the work of a class, kept apart from what the grader found. */
export interface Notes {
  /** By the key of the draft, see `draftKey`. */
  readonly pieces: ReadonlyMap<string, PieceNotes>;
  /** By the student's key. */
  readonly students: ReadonlyMap<string, StudentNote>;
  /** Who is in the class, a student a line, as the teacher wrote it (`class-list.ts`); empty where nobody said. */
  readonly list: string;
  /** Another class list than that, which came with a marking file: to be taken instead. It is in no file but its own. */
  readonly otherList: string;
  /** Which of several attempts counts. */
  readonly counts: Counts;
}

export const NO_NOTES: Notes = { pieces: new Map(), students: new Map(), list: '', otherList: '', counts: 'last' };
export const UNTOUCHED: PieceNotes = { marks: {}, comment: '' };

/** Longest reason and longest comment, in characters. */
export const REASON_LENGTH = 1000;
export const COMMENT_LENGTH = 4000;

/** Whether there is nothing in it. */
export function isUntouched({ marks, comment }: PieceNotes): boolean {
  return comment === '' && Object.keys(marks).length === 0;
}

/** With a mark for the target, or with null the grader's again. */
export function withMark(notes: PieceNotes, target: Name, mark: OwnMark | null): PieceNotes {
  const { [target]: _before, ...others } = notes.marks;
  return { ...notes, marks: mark === null ? others : { ...others, [target]: mark } };
}

/** With what is written on a draft changed; what comes to nothing is not kept. */
export function withPiece(notes: Notes, key: string, change: (now: PieceNotes) => PieceNotes): Notes {
  const pieces = new Map(notes.pieces);
  const next = change(pieces.get(key) ?? UNTOUCHED);
  if (isUntouched(next)) pieces.delete(key);
  else pieces.set(key, next);
  return { ...notes, pieces };
}

/** With what is for a student changed; what comes to nothing is not kept. */
export function withStudent(
  notes: Notes,
  { student, number }: Student,
  change: Partial<Pick<StudentNote, 'comment' | 'until'>>,
): Notes {
  const students = new Map(notes.students);
  const key = studentKey({ student, number });
  const next = { comment: '', until: null, ...students.get(key), student, number, ...change };
  if (next.comment === '' && next.until === null) students.delete(key);
  else students.set(key, next);
  return { ...notes, students };
}

/** By the student's key, to when more time was given. */
export function ownTimes({ students }: Pick<Notes, 'students'>): ReadonlyMap<string, string> {
  return new Map([...students].flatMap(([key, { until }]) => (until === null ? [] : [[key, until] as const])));
}

/** With the two class lists in each other's place. */
export function withOtherList(notes: Notes): Notes {
  return { ...notes, list: notes.otherList, otherList: notes.list };
}
