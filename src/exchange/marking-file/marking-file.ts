import type { Counts } from '../class/counting.ts';
import type { HandIn } from '../hand-in.ts';
import type { PieceNotes, StudentNote } from '../notes/notes.ts';
import type { ProblemSet } from '../set.ts';

/** What a marking file says of itself. */
export const MARKING_FORMAT = 'gorgeline marking';
export const MARKING_VERSION = 1;

/** Largest that is read, in characters, and most pieces of work in it: far more than a school year's class hands in. */
export const MARKING_LENGTH = 64 * 1024 * 1024;
export const MARKING_WORK = 20_000;

/** A piece of work as it lay on the desk, with what the teacher wrote on it. */
export interface FiledPiece extends PieceNotes {
  /** Where it was found: a file, and its line where the file held several pieces. */
  readonly found: string;
  readonly handIn: HandIn;
}

/** Something that could not be read. */
export interface FiledUnread {
  /** Where it lay. */
  readonly found: string;
  /** How it begins, where it begins as a hand-in (`begunText`); empty otherwise. */
  readonly begun: string;
  /** Why it could not be read, as it was told in English; empty where it had not been read at all. */
  readonly why: string;
}

/** All the work on a marking desk. It holds drafts and what a teacher wrote, and nothing that the grader found. */
export interface MarkingFile {
  /** The set by which the work is marked; null where each piece is marked by itself. */
  readonly set: ProblemSet | null;
  readonly work: readonly FiledPiece[];
  readonly students: readonly StudentNote[];
  readonly unread: readonly FiledUnread[];
  /** Who is in the class, a student a line, as the teacher wrote it; may be empty. */
  readonly list: string;
  /** Which of several attempts counts. */
  readonly counts: Counts;
  /** When it was saved; ISO 8601, null where that is not told. */
  readonly saved: string | null;
}
