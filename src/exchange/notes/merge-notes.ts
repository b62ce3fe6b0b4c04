import type { FiledPiece } from '../marking-file/marking-file.ts';
import { studentKey } from '../student.ts';
import { draftKey } from './draft-key.ts';
import { isUntouched, type Notes, type PieceNotes, type StudentNote, UNTOUCHED } from './notes.ts';

/** What a file says was written. */
interface Filed {
  readonly work: readonly FiledPiece[];
  readonly students: readonly StudentNote[];
  readonly list: string;
}

export interface MergedNotes {
  readonly notes: Notes;
  /** On how many drafts and to how many students the file says something else than what was there. */
  readonly clashes: number;
}

/** What is written by one hand, with what a file says: where the two differ, what was there stays, and is counted. */
export function mergedNotes(there: Notes, { work, students, list }: Filed): MergedNotes {
  const pieces = mergedPieces(there.pieces, work);
  const toStudents = mergedStudents(there.students, students);
  return {
    notes: { pieces: pieces.merged, students: toStudents.merged, list: there.list || list },
    clashes: pieces.clashes + toStudents.clashes,
  };
}

interface Merged<T> {
  readonly merged: ReadonlyMap<string, T>;
  readonly clashes: number;
}

function mergedPieces(there: Notes['pieces'], work: readonly FiledPiece[]): Merged<PieceNotes> {
  const merged = new Map(there);
  const clashing = new Set<string>();
  for (const { handIn, marks, comment } of work) {
    const filed: PieceNotes = { marks, comment };
    if (isUntouched(filed)) continue;
    const key = draftKey(handIn);
    const own = merged.get(key) ?? UNTOUCHED;
    merged.set(key, { marks: { ...marks, ...own.marks }, comment: own.comment || comment });
    if (clash(own, filed)) clashing.add(key);
  }
  return { merged, clashes: clashing.size };
}

function mergedStudents(there: Notes['students'], students: readonly StudentNote[]): Merged<StudentNote> {
  const written = students.filter(({ comment }) => comment !== '');
  const clashes = written.filter((note) => {
    const own = there.get(studentKey(note));
    return own !== undefined && own.comment !== note.comment;
  });
  const filed = written.map((note) => [studentKey(note), note] as const);
  return { merged: new Map([...filed, ...there]), clashes: clashes.length };
}

function clash(own: PieceNotes, filed: PieceNotes): boolean {
  const marks = Object.entries(filed.marks).some(([target, { marks: given, reason }]) => {
    const before = Object.hasOwn(own.marks, target) ? own.marks[target] : undefined;
    return before !== undefined && (before.marks !== given || before.reason !== reason);
  });
  return marks || (own.comment !== '' && filed.comment !== '' && own.comment !== filed.comment);
}
