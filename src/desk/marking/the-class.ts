import { earlierOf, latestOf } from '../../exchange/class/class-work.ts';
import type { Student } from '../../exchange/student.ts';
import type { Sound } from './intake/taken.ts';

/** The work of a class on the desk. */
export interface TheClass {
  /** Of each student and exercise the piece that counts. */
  readonly counted: readonly Sound[];
  /** Pieces that a later one took the place of. */
  readonly earlier: readonly Sound[];
  /** The piece that counts; undefined where there is none. */
  readonly pieceOf: (student: string, exercise: string) => Sound | undefined;
  /** Who is known by a key. */
  readonly whoIs: (student: string) => Student;
}

export function theClass(sound: readonly Sound[]): TheClass {
  const work = sound.map((one) => {
    const { student, exercise, saved } = one.kept;
    return { student, exercise, saved, one };
  });
  const counted = latestOf(work);
  const byPlace = new Map(counted.map(({ student, exercise, one }) => [JSON.stringify([student, exercise]), one]));
  const names = new Map(sound.map(({ kept }) => [kept.student, kept.who]));
  return {
    counted: counted.map(({ one }) => one),
    earlier: earlierOf(work).map(({ one }) => one),
    pieceOf: (student, exercise) => byPlace.get(JSON.stringify([student, exercise])),
    whoIs: (student) => names.get(student) ?? { student, number: '' },
  };
}
