import { parseExercise } from '../cli/exercises.ts';
import { type LessonHead, underLessons } from '../course/under-lessons.ts';
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

/** How the exercises of a lesson are found, given all lessons. */
export function exercisesUnder(lessons: readonly LessonHead[]): (lesson: LessonHead) => readonly Exercise[] {
  const under = underLessons(lessons, exercises);
  return ({ id }) => under.get(id) ?? [];
}
