import type { VNode } from 'preact';
import { useEffect, useMemo, useState } from 'preact/hooks';
import type { Name } from '../../drafting/step.ts';
import { setMark } from '../../exchange/write-set.ts';
import type { Exercise } from '../../grader/exercise.ts';
import type { Onward } from '../../table/onward.ts';
import { sayFor } from '../../table/say.ts';
import type { SetInHand } from '../../table/set-in-hand.ts';
import { Table } from '../../table/Table.tsx';
import { useReader } from '../../table/use-reader.ts';
import { keptSet } from './kept-set.ts';
import { onwardIn } from './onward-in.ts';
import { keptStudent, local } from './use-work.ts';

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
  const [inSet, setInSet] = useState<SetInHand | null>(null);
  const [lost, setLost] = useState(false);
  const reader = useReader(language);
  const say = useMemo(() => sayFor(reader), [reader]);
  useEffect(() => {
    const take = (): void => {
      const id = /^#in=([0-9a-f]{8})$/.exec(window.location.hash)?.[1];
      const set = id === undefined ? null : keptSet(local, Object.keys(titles), id);
      const found = set?.exercises.some((one) => one.exercise === exercise.id) ? set : null;
      setInSet(found && { set: found, mark: setMark(found), student: keptStudent() });
      setLost(id !== undefined && found === null);
    };
    take();
    window.addEventListener('hashchange', take);
    return () => window.removeEventListener('hashchange', take);
  }, [exercise, titles]);
  const onward = inSet ? onwardIn(inSet, exercise.id, titles, wayBack) : next;
  return (
    <>
      {lost ? <p class="notice">{say('table.set-elsewhere')}</p> : null}
      <Table
        key={inSet?.mark.id ?? ''}
        exercise={exercise}
        inSet={inSet}
        wayBack={wayBack}
        onward={onward}
        language={language}
      />
      <nav class="exercise-ways" aria-label={say('course.lesson-nav')}>
        {onward ? <a href={onward.href}>{say.message(onward.says)}</a> : null}
        {inSet ? null : <a href={allExercises}>{say('course.exercises-all')}</a>}
      </nav>
    </>
  );
}
