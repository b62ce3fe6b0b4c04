import type { Sound } from '../intake/taken.ts';
import { type Opened, useOpened } from '../piece/use-opened.ts';
import type { TheClass } from '../the-class.ts';
import { type ExercisesOnDesk, useExercises } from '../use-exercises.ts';

/** The class whose work lies on the desk, the piece that lies open, and the exercises they are shown by. */
export interface ClassInHand {
  readonly sound: readonly Sound[];
  readonly work: TheClass;
  readonly opened: Opened;
  readonly exercises: ExercisesOnDesk;
}

/** `from` is where the exercises lie, whole, from the page's own address. */
export function useClass(sound: readonly Sound[], work: TheClass, from: string): ClassInHand {
  const opened = useOpened(sound);
  const exercises = useExercises(from, opened.piece);
  return { sound, work, opened, exercises };
}
