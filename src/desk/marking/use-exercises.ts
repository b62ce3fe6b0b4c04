import { useState } from 'preact/hooks';
import type { Exercise } from '../../grader/exercise.ts';

export interface ExercisesOnDesk {
  /** Null until they were wanted and came. */
  readonly known: Readonly<Record<string, Exercise>> | null;
  /** Whether they were wanted and did not come. */
  readonly missing: boolean;
  readonly want: () => Promise<void>;
}

/** The exercises of the course, fetched from the site itself once somebody wants to see a draft. */
export function useExercises(from: string): ExercisesOnDesk {
  const [known, setKnown] = useState<ExercisesOnDesk['known']>(null);
  const [missing, setMissing] = useState(false);
  const want = async (): Promise<void> => {
    if (known !== null) return;
    try {
      const answer = await fetch(from);
      setKnown((await answer.json()) as NonNullable<ExercisesOnDesk['known']>);
      setMissing(false);
    } catch {
      setMissing(true);
    }
  };
  return { known, missing, want };
}
