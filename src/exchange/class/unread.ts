import type { Name } from '../../drafting/step.ts';
import { beginningOf } from '../beginning.ts';
import { fileNameOf } from '../file-name.ts';
import { type Student, studentKey } from '../student.ts';
import { isPartOf, type Part, partOf, type Whole } from '../whole.ts';

/** A piece of work that could not be read, as far as it tells of itself. */
export interface UnreadPiece {
  /** The file it lay in, with its folders. */
  readonly file: string;
  /** Who handed it in, by its own beginning; null where that does not say. */
  readonly who: Student | null;
  readonly exercise: Name | null;
  /** By what its whole would be known; null where its beginning does not say. */
  readonly part: Part | null;
}

/** `where` is its file, with the line where it holds several pieces; `begun` is how it begins (`begunText`). */
export function unreadPiece(where: string, begun: string): UnreadPiece {
  const beginning = beginningOf(begun);
  const who = beginning && { student: beginning.student, number: beginning.number };
  return { file: where.replace(/:\d+$/, ''), who, exercise: beginning?.exercise ?? null, part: partOf(begun) };
}

/** What could not be read and whose whole does not lie among what could. */
export function stillMissing(unread: readonly UnreadPiece[], wholes: readonly Whole[]): readonly UnreadPiece[] {
  const asked = new Set(unread.flatMap(({ part }) => part?.of ?? []));
  const known = Map.groupBy(
    wholes.filter((whole) => asked.has(whole.of)),
    (whole) => whole.of,
  );
  return unread.filter(({ part }) => part === null || !known.get(part.of)?.some((whole) => isPartOf(part, whole)));
}

/** What could not be read, under the key of the student it belongs to. What belongs to nobody who can be told is left out. */
export function unreadByStudent(
  unread: readonly UnreadPiece[],
  known: readonly Student[],
): ReadonlyMap<string, readonly (UnreadPiece & { readonly who: Student })[]> {
  const students = new Map([...unread.flatMap(({ who }) => who ?? []), ...known].map((one) => [studentKey(one), one]));
  const belonging = unread.flatMap((piece) => {
    const who = piece.who ?? whoseFile(piece.file, [...students.values()]);
    return who === null ? [] : [{ ...piece, who }];
  });
  return Map.groupBy(belonging, ({ who }) => studentKey(who));
}

/** Whose name a hand-in's file has, as the course names such files; null where it is nobody's, or several students'. */
function whoseFile(file: string, students: readonly Student[]): Student | null {
  const own = file.split('/').at(-1)?.toLowerCase() ?? '';
  if (!own.includes('.hand-in')) return null;
  const named = students.filter(({ student }) => {
    const name = fileNameOf([student], '');
    return name !== '' && own.startsWith(name);
  });
  return named.length === 1 ? (named[0] ?? null) : null;
}
