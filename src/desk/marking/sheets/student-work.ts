import type { Name } from '../../../drafting/step.ts';
import type { BookLine, Entry, Gradebook } from '../../../exchange/class/gradebook.ts';
import type { Sound } from '../intake/taken.ts';
import type { TheClass } from '../the-class.ts';

/** What one student handed in for one exercise: what the gradebook counts, and the piece itself; null where there is none. */
export interface ExerciseWork {
  readonly exercise: Name;
  readonly counted: { readonly entry: Entry; readonly piece: Sound } | null;
}

/** What a student's sheet tells of: every exercise of the gradebook, in its order. What is not of the set is told only to who did it. */
export function studentWork(
  { key, entries }: BookLine,
  { exercises }: Gradebook,
  { pieceOf }: Pick<TheClass, 'pieceOf'>,
  ofSet: readonly Name[],
): readonly ExerciseWork[] {
  return exercises.flatMap((exercise): readonly ExerciseWork[] => {
    const entry = entries.get(exercise);
    const piece = pieceOf(key, exercise);
    if (entry && piece) return [{ exercise, counted: { entry, piece } }];
    return ofSet.includes(exercise) ? [{ exercise, counted: null }] : [];
  });
}
