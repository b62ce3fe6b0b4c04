import type { Name } from '../../drafting/step.ts';
import { usualMarks } from '../../exchange/set-marks.ts';
import type { Exercise } from '../../grader/exercise.ts';

/** What the desk needs to know of an exercise to set it. */
export interface ExerciseCard {
  readonly id: Name;
  readonly title: string;
  /** What it is worth unless the teacher says otherwise. */
  readonly marks: number;
  /** House rules it works by. */
  readonly rules: readonly Name[];
}

/** Exercises under the lesson they belong to, in the order of the course. */
export interface LessonCards {
  readonly lesson: string;
  readonly title: string;
  readonly exercises: readonly ExerciseCard[];
}

export function cardOf(exercise: Exercise): ExerciseCard {
  const { id, title, house } = exercise;
  return { id, title, marks: usualMarks(exercise), rules: Object.keys(house) };
}
