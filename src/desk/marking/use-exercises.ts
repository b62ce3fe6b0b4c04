import { useEffect, useState } from 'preact/hooks';
import type { Exercise } from '../../grader/exercise.ts';

export interface ExercisesOnDesk {
  /** Null until they were wanted and came. */
  readonly known: Readonly<Record<string, Exercise>> | null;
  /** Whether they were wanted and did not come. */
  readonly missing: boolean;
}

/** The exercises of the course, fetched from the site itself once there is work that they belong to; again where they did not come. */
export function useExercises(from: string, wanted: unknown): ExercisesOnDesk {
  const [known, setKnown] = useState<ExercisesOnDesk['known']>(null);
  const [missing, setMissing] = useState(false);
  // biome-ignore lint/correctness/useExhaustiveDependencies: whenever something else is wanted, it is tried again.
  useEffect(() => {
    if (known !== null) return;
    fetch(from)
      .then((answer) => answer.json())
      .then((all: NonNullable<ExercisesOnDesk['known']>) => {
        setKnown(all);
        setMissing(false);
      })
      .catch(() => setMissing(true));
  }, [from, wanted]);
  return { known, missing };
}
