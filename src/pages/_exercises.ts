import { parseExercise } from '../cli/exercises.ts';
import { lookUp } from '../course/authoring-error.ts';
import { exerciseNaming } from '../course/namings.ts';
import type { Exercise } from '../grader/exercise.ts';

/** Every file of `exercises/`, as text. */
const files = import.meta.glob<string>('/exercises/*.yaml', { query: '?raw', import: 'default', eager: true });

/** Every exercise by id, read when the site is built; a file that has to be mended stops the build and says where. */
export const exercises: ReadonlyMap<string, Exercise> = new Map(
  Object.entries(files).map(([path, text]) => {
    const id = path.replace(/^.*\//, '').replace(/\.yaml$/, '');
    return [id, parseExercise(id, text)];
  }),
);

/** The exercises a lesson names, in its order; an authoring error when there is no such file. */
export function exercisesOf(ids: readonly string[]): readonly Exercise[] {
  return ids.map((id) => lookUp(exercises, id, exerciseNaming));
}
