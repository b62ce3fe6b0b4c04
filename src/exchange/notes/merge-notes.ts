import type { Counts } from '../class/counting.ts';
import type { FiledPiece } from '../marking-file/marking-file.ts';
import { studentKey } from '../student.ts';
import { draftKey } from './draft-key.ts';
import { isUntouched, type Notes, type PieceNotes, type StudentNote, UNTOUCHED } from './notes.ts';

/** What a file says was written. */
interface Filed {
  readonly work: readonly FiledPiece[];
  readonly students: readonly StudentNote[];
  readonly list: string;
  readonly counts: Counts;
}

export interface MergedNotes {
  readonly notes: Notes;
  /** On how many drafts and to how many students the file says something else than what was there. */
  readonly clashes: number;
}

/**
 * What is written by one hand, with what a file says: where the two differ, what was there stays, and is counted. Another class
 * list lies beside that of the desk then.
 */
export function mergedNotes(there: Notes, { work, students, list, counts }: Filed): MergedNotes {
  const pieces = mergedPieces(there.pieces, work);
  const toStudents = mergedStudents(there.students, students);
  return {
    notes: {
      ...{ pieces: pieces.merged, students: toStudents.merged, ...mergedLists(there, list) },
      // On a desk that says nothing of it, what was saved last counts.
      counts: there.counts === 'last' ? counts : there.counts,
    },
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
  const written = students.filter(({ comment, until }) => comment !== '' || until !== null);
  const filed = written.map((note) => {
    const own = there.get(studentKey(note));
    return {
      note,
      own,
      both: own ? { ...own, comment: own.comment || note.comment, until: own.until ?? note.until } : note,
    };
  });
  const clashes = filed.filter(({ note, own }) => own !== undefined && isOther(own, note));
  const merged = filed.map(({ both }) => [studentKey(both), both] as const);
  return { merged: new Map([...there, ...merged]), clashes: clashes.length };
}

/** Whether both say something of the same, and not the same. */
function isOther(own: StudentNote, filed: StudentNote): boolean {
  const comments = own.comment !== '' && filed.comment !== '' && own.comment !== filed.comment;
  return comments || (own.until !== null && filed.until !== null && own.until !== filed.until);
}

function mergedLists({ list, otherList }: Notes, filed: string): Pick<Notes, 'list' | 'otherList'> {
  if (list === '' || filed === '' || filed === list) return { list: list || filed, otherList };
  return { list, otherList: filed };
}

function clash(own: PieceNotes, filed: PieceNotes): boolean {
  const marks = Object.entries(filed.marks).some(([target, { marks: given, reason }]) => {
    const before = Object.hasOwn(own.marks, target) ? own.marks[target] : undefined;
    return before !== undefined && (before.marks !== given || before.reason !== reason);
  });
  return marks || (own.comment !== '' && filed.comment !== '' && own.comment !== filed.comment);
}
