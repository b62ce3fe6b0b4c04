import type { VNode } from 'preact';
import { useMemo } from 'preact/hooks';
import type { Name } from '../../drafting/step.ts';
import type { Exercise } from '../../grader/exercise.ts';
import type { Onward } from '../../table/onward.ts';
import { sayFor } from '../../table/say.ts';
import { isTrial } from '../../table/store/own-storage.ts';
import { Table } from '../../table/Table.tsx';
import { useReader } from '../../table/use-reader.ts';
import { inSetHash, wayBackTo } from './in-set.ts';
import { onwardIn } from './onward-in.ts';
import { useSetInHand } from './use-set-in-hand.ts';

interface ExerciseInSetProps {
  readonly exercise: Exercise;
  /** The title of every exercise, by its name. */
  readonly titles: Readonly<Record<Name, string>>;
  /** What comes after it in practice; null where nothing does. */
  readonly next: Onward | null;
  /** Where sets are worked on, from the page's own address. */
  readonly wayBack: string;
  /** Where all exercises are listed, from the page's own address. */
  readonly allExercises: string;
  readonly language: string;
}

/** The table of an exercise: for practice, or, where the address says so, in a set that is open in this browser. */
export function ExerciseInSet({ exercise, titles, next, wayBack, allExercises, language }: ExerciseInSetProps): VNode {
  const { inSet, lost, here } = useSetInHand(exercise, titles);
  const reader = useReader(language);
  const say = useMemo(() => sayFor(reader), [reader]);
  const back = inSet ? wayBackTo(wayBack, inSet.mark.id, here) : wayBack;
  const onward = inSet ? onwardIn(inSet, exercise.id, titles, back, here) : next;
  return (
    <>
      {lost ? <p class="notice exercise-notice">{say('table.set-elsewhere')}</p> : null}
      {isTrial(here) ? <p class="notice exercise-notice">{say('work.trial')}</p> : null}
      <Table
        key={inSet ? inSetHash(inSet.mark.id, here) : ''}
        exercise={exercise}
        inSet={inSet}
        wayBack={back}
        onward={onward}
        language={language}
      />
      {/* Beside the draft stands the way back to the set: it is not repeated under it. */}
      {inSet && onward?.href === back ? null : (
        <nav class="exercise-ways" aria-label={say('course.lesson-nav')}>
          {onward ? <a href={onward.href}>{say.message(onward.says)}</a> : null}
          {inSet ? null : <a href={allExercises}>{say('course.exercises-all')}</a>}
        </nav>
      )}
    </>
  );
}
