import { useState } from 'preact/hooks';
import type { Exercise } from '../../grader/exercise.ts';

export type Exercises = Readonly<Record<string, Exercise>>;

/** The exercises of the course, fetched from the site itself once somebody wants to see a draft. */
export function useExercises(from: string): readonly [Exercises | null, () => void] {
  const [exercises, setExercises] = useState<Exercises | null>(null);
  const want = (): void => {
    if (exercises !== null) return;
    fetch(from)
      .then(async (answer) => setExercises((await answer.json()) as Exercises))
      .catch(() => undefined);
  };
  return [exercises, want];
}
