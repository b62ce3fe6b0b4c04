import { besideOf, type Counts, countingOf } from '../../exchange/class/counting.ts';
import type { Student } from '../../exchange/student.ts';
import type { Sound } from './intake/taken.ts';

/** The work of a class on the desk. */
export interface TheClass {
  /** Of each student and exercise the piece that counts. */
  readonly counted: readonly Sound[];
  /** Pieces of which another one counts. */
  readonly others: readonly Sound[];
  /** The piece that counts; undefined where there is none. */
  readonly pieceOf: (student: string, exercise: string) => Sound | undefined;
  /** Who is known by a key. */
  readonly whoIs: (student: string) => Student;
}

/** By what it is decided which piece counts; `earned` is what a piece comes to with the teacher's marks. */
export interface Counting {
  readonly counts: Counts;
  readonly earned: (piece: Sound) => number;
}

/** Of several pieces the last counts, by the marks of the grader alone. */
export const LAST: Counting = { counts: 'last', earned: ({ entry }) => entry.marks };

export function theClass(sound: readonly Sound[], { counts, earned }: Counting = LAST): TheClass {
  const work = sound.map((one) => {
    const { student, exercise, saved } = one.kept;
    return { student, exercise, saved, one };
  });
  const counted = countingOf(work, counts, ({ one }) => earned(one));
  const byPlace = new Map(counted.map(({ student, exercise, one }) => [JSON.stringify([student, exercise]), one]));
  const names = new Map(sound.map(({ kept }) => [kept.student, kept.who]));
  return {
    counted: counted.map(({ one }) => one),
    others: besideOf(work, counted).map(({ one }) => one),
    pieceOf: (student, exercise) => byPlace.get(JSON.stringify([student, exercise])),
    whoIs: (student) => names.get(student) ?? { student, number: '' },
  };
}
