import type { Exercise } from '../grader/exercise.ts';
import type { Onward } from '../table/onward.ts';
import { message } from '../words/message.ts';

/** A lesson in the order of the course, and the exercises under it. */
export interface LessonUnder {
  readonly id: string;
  readonly title: string;
  readonly exercises: readonly Exercise[];
}

/** What comes after an exercise, for its page: the next under its lesson; after the last the next lesson, which is read before it is drawn. */
export function afterExercise(lessons: readonly LessonUnder[], exercise: Exercise): Onward | null {
  const place = lessons.findIndex(({ exercises }) => exercises.includes(exercise));
  const own = lessons[place]?.exercises ?? [];
  const next = own[own.indexOf(exercise) + 1];
  if (next) return { href: `../${next.id}/`, says: message('course.exercise-next', { title: next.title }) };
  const lesson = place < 0 ? undefined : lessons[place + 1];
  if (!lesson) return null;
  return { href: `../../lessons/${lesson.id}/`, says: message('course.lesson-next', { title: lesson.title }) };
}
