import { useEffect, useState } from 'preact/hooks';
import type { Name } from '../../drafting/step.ts';
import { setMark } from '../../exchange/write-set.ts';
import type { Exercise } from '../../grader/exercise.ts';
import type { SetInHand } from '../../table/set-in-hand.ts';
import { local } from '../../table/store/own-storage.ts';
import { setIn } from './in-set.ts';
import { keptSet } from './kept-set.ts';
import { keptStudent } from './use-work.ts';

/** The set to which the address says an exercise belongs. */
interface SetMeant {
  /** Null where none is meant, and where it is not open in this browser. */
  readonly inSet: SetInHand | null;
  /** Whether one is meant and is not open in this browser. */
  readonly lost: boolean;
  /** What stands behind the `#` of the address; empty before the page is awake. */
  readonly here: string;
}

/** The set by which the exercise is done, as the page wakes and whenever another one is meant. */
export function useSetInHand(exercise: Exercise, titles: Readonly<Record<Name, string>>): SetMeant {
  const [meant, setMeant] = useState<SetMeant>({ inSet: null, lost: false, here: '' });
  useEffect(() => {
    const take = (): void => {
      const { hash } = window.location;
      const id = setIn(hash);
      const set = id === null ? null : keptSet(local, Object.keys(titles), id);
      const found = set?.exercises.some((one) => one.exercise === exercise.id) ? set : null;
      const inSet = found && { set: found, mark: setMark(found), student: keptStudent() };
      setMeant({ inSet, lost: id !== null && found === null, here: hash });
    };
    take();
    window.addEventListener('hashchange', take);
    return () => window.removeEventListener('hashchange', take);
  }, [exercise, titles]);
  return meant;
}
