import type { Name } from '../../../drafting/step.ts';
import { latestOf } from '../../../exchange/class/class-work.ts';
import type { BookLine, Entry, Gradebook } from '../../../exchange/class/gradebook.ts';
import type { Sound } from '../Book.tsx';

/** What one student handed in for one exercise: what the gradebook counts, and the piece itself; null where there is none. */
export interface ExerciseWork {
  readonly exercise: Name;
  readonly counted: { readonly entry: Entry; readonly piece: Sound } | null;
}

/** The pieces that count, each by its student and exercise. */
export type CountedPieces = ReadonlyMap<string, Sound>;

/** Of each student's work on an exercise the piece that counts, as in the gradebook. */
export function countedPieces(sound: readonly Sound[]): CountedPieces {
  const work = sound.map((one) => {
    const { student, exercise, saved } = one.kept;
    return { student, exercise, saved, one };
  });
  return new Map(latestOf(work).map(({ student, exercise, one }) => [placeOf(student, exercise), one]));
}

/** What a student's sheet tells of: every exercise of the gradebook, in its order. What is not of the set is told only to who did it. */
export function studentWork(
  { key, entries }: BookLine,
  { exercises }: Gradebook,
  pieces: CountedPieces,
  ofSet: readonly Name[],
): readonly ExerciseWork[] {
  return exercises.flatMap((exercise): readonly ExerciseWork[] => {
    const entry = entries.get(exercise);
    const piece = pieces.get(placeOf(key, exercise));
    if (entry && piece) return [{ exercise, counted: { entry, piece } }];
    return ofSet.includes(exercise) ? [{ exercise, counted: null }] : [];
  });
}

function placeOf(student: string, exercise: Name): string {
  return JSON.stringify([student, exercise]);
}
