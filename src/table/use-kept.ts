import { useEffect, useLayoutEffect, useMemo, useState } from 'preact/hooks';
import type { SetMark } from '../exchange/set.ts';
import type { Exercise } from '../grader/exercise.ts';
import { KeptDraft } from './store/kept-draft.ts';
import { local } from './store/own-storage.ts';
import { type DraftRecord, keyOf, printRecord } from './store/record.ts';
import type { Kept } from './store/storage.ts';
import { useOtherTabs } from './use-other-tabs.ts';

/**
 * How keeping the draft goes. `damaged` holds the raw text that could not be read; `elsewhere`: another tab has kept another
 * draft meanwhile, and nothing is written over it before the learner says so.
 */
export type Keeping =
  | { readonly state: 'waiting' }
  | { readonly state: Kept }
  | { readonly state: 'damaged'; readonly raw: string }
  | { readonly state: 'elsewhere' };

interface DraftKept {
  readonly keeping: Keeping;
  /** Forgets what is kept, damaged or another tab's, and keeps the draft that lies here from now on. */
  readonly keepMine: () => void;
  /** Lays the draft here that another tab has kept. */
  readonly takeOther: () => void;
}

type TakeUp = (record: DraftRecord, from: 'start' | 'other') => void;

/**
 * Takes up the kept draft once the page is awake, and keeps every change from then on. `takeUp` lays a kept draft on the
 * table: the one that is found at the start, or, as a change that can be undone, another tab's.
 */
export function useKept(exercise: Exercise, set: SetMark | null, record: DraftRecord, takeUp: TakeUp): DraftKept {
  const [keeping, setKeeping] = useState<Keeping>({ state: 'waiting' });
  const key = keyOf(exercise.id, set);
  const kept = useMemo(() => new KeptDraft(local, key, exercise), [key, exercise]);
  const { handIn, upTo, checked } = record;
  const text = useMemo(() => printRecord({ handIn, upTo, checked }), [handIn, upTo, checked]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the kept draft is taken up once, as the page wakes.
  useEffect(() => setKeeping(startWith(kept, text, takeUp)), []);
  const isKeeping = keeping.state === 'kept' || keeping.state === 'full' || keeping.state === 'forbidden';
  // Before the change is seen: a tab that is closed the moment after has kept it.
  // biome-ignore lint/correctness/useExhaustiveDependencies: written once a change of the text.
  useLayoutEffect(() => {
    if (!isKeeping || kept.hasWritten(text)) return;
    setKeeping({ state: kept.isOthers(record) ? 'elsewhere' : kept.write(text) });
  }, [text, isKeeping, key]);
  useOtherTabs(key, () => {
    if (isKeeping && kept.isOthers(record)) setKeeping({ state: 'elsewhere' });
  });
  return {
    keeping,
    keepMine: () => {
      kept.forget();
      setKeeping({ state: kept.write(text) });
    },
    takeOther: () => {
      const other = kept.take();
      if (other.state === 'draft') takeUp(other.record, 'other');
      setKeeping(other.state === 'damaged' ? other : { state: 'kept' });
    },
  };
}

/** Takes up what lies there as the page wakes, and says how keeping it goes. */
function startWith(kept: KeptDraft, text: string, takeUp: TakeUp): Keeping {
  const found = kept.take();
  if (found.state === 'damaged') return found;
  if (found.state === 'draft') takeUp(found.record, 'start');
  else kept.begin(text);
  return { state: kept.keepAsFound() };
}
