import type { VNode } from 'preact';
import { useEffect, useMemo, useState } from 'preact/hooks';
import type { Name } from '../../drafting/step.ts';
import { setMark } from '../../exchange/write-set.ts';
import type { Exercise } from '../../grader/exercise.ts';
import { sayFor } from '../../table/say.ts';
import type { SetInHand } from '../../table/set-in-hand.ts';
import { Table } from '../../table/Table.tsx';
import { useReader } from '../../table/use-reader.ts';
import { keptSet } from './kept-set.ts';
import { keptStudent, local } from './use-work.ts';

interface ExerciseInSetProps {
  readonly exercise: Exercise;
  /** The names of all exercises. */
  readonly names: readonly Name[];
  /** Where sets are worked on, from the page's own address. */
  readonly wayBack: string;
  readonly language: string;
}

/** The table of an exercise: for practice, or, where the address says so, in a set that is open in this browser. */
export function ExerciseInSet({ exercise, names, wayBack, language }: ExerciseInSetProps): VNode {
  const [inSet, setInSet] = useState<SetInHand | null>(null);
  const [lost, setLost] = useState(false);
  const reader = useReader(language);
  const say = useMemo(() => sayFor(reader), [reader]);
  useEffect(() => {
    const take = (): void => {
      const id = /^#in=([0-9a-f]{8})$/.exec(window.location.hash)?.[1];
      const set = id === undefined ? null : keptSet(local, names, id);
      const found = set?.exercises.some((one) => one.exercise === exercise.id) ? set : null;
      setInSet(found && { set: found, mark: setMark(found), student: keptStudent() });
      setLost(id !== undefined && found === null);
    };
    take();
    window.addEventListener('hashchange', take);
    return () => window.removeEventListener('hashchange', take);
  }, [exercise, names]);
  return (
    <>
      {lost ? <p class="notice">{say('table.set-elsewhere')}</p> : null}
      <Table key={inSet?.mark.id ?? ''} exercise={exercise} inSet={inSet} wayBack={wayBack} language={language} />
    </>
  );
}
