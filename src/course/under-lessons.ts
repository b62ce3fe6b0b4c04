import type { Exercise } from '../grader/exercise.ts';
import { lookUp } from './authoring-error.ts';
import { exerciseNaming } from './namings.ts';

/** A lesson as its head has it: its id, and the exercises it names, in the order to do them. */
export interface LessonHead {
  readonly id: string;
  readonly data: { readonly exercises: readonly string[] };
}

/**
 * The exercises under each lesson: those it names, in its order, then those that belong to it and that no lesson names.
 * So an exercise has its place on the site as soon as its own file is there. An authoring error where a lesson names one
 * that is not.
 */
export function underLessons(
  lessons: readonly LessonHead[],
  exercises: ReadonlyMap<string, Exercise>,
): ReadonlyMap<string, readonly Exercise[]> {
  const named = new Set(lessons.flatMap(({ data }) => data.exercises));
  const unnamed = [...exercises.values()].filter(({ id }) => !named.has(id));
  return new Map(
    lessons.map(({ id, data }) => [
      id,
      [
        ...data.exercises.map((exercise) => lookUp(exercises, exercise, exerciseNaming)),
        ...unnamed.filter(({ lesson }) => lesson === id),
      ],
    ]),
  );
}
