import { useEffect, useRef, useState } from 'preact/hooks';
import type { SetMark } from '../exchange/set.ts';
import type { Exercise } from '../grader/exercise.ts';
import { type DraftRecord, keyOf, printRecord, readRecord, sameDraft } from './store/record.ts';
import { type Kept, storageIn } from './store/storage.ts';
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

interface KeptDraft {
  readonly keeping: Keeping;
  /** Forgets what is kept, damaged or another tab's, and keeps the draft that lies here from now on. */
  readonly keepMine: () => void;
  /** Lays the draft here that another tab has kept. */
  readonly takeOther: () => void;
}

const local = storageIn(() => window.localStorage);

/**
 * Takes up the kept draft once the page is awake, and keeps every change from then on. `takeUp` lays a kept draft on the
 * table: the one that is found at the start, or, as a change that can be undone, another tab's.
 */
export function useKept(
  exercise: Exercise,
  set: SetMark | null,
  record: DraftRecord,
  takeUp: (record: DraftRecord, from: 'start' | 'other') => void,
): KeptDraft {
  const [keeping, setKeeping] = useState<Keeping>({ state: 'waiting' });
  const key = keyOf(exercise.id, set);
  /** The draft as it was last written or taken up, and the text that lay in the storage then. */
  const written = useRef<string | null>(null);
  const lying = useRef<string | null>(null);
  const text = printRecord(record);

  const write = (next: string): void => {
    const state = local.write(key, next);
    lying.current = local.read(key);
    setKeeping({ state });
  };
  /** Whether somebody else has kept a draft there that is not this one. */
  const isOthers = (): boolean => {
    const there = local.read(key);
    if (there === null || there === lying.current) return false;
    const other = readRecord(there, exercise);
    return other === null || !sameDraft(other, record);
  };

  // biome-ignore lint/correctness/useExhaustiveDependencies: the kept draft is taken up once, as the page wakes.
  useEffect(() => {
    const raw = local.read(key);
    const kept = raw === null ? null : readRecord(raw, exercise);
    if (raw !== null && !kept) {
      setKeeping({ state: 'damaged', raw });
      return;
    }
    written.current = kept ? printRecord(kept) : text;
    lying.current = raw;
    if (kept) takeUp(kept, 'start');
    setKeeping({ state: raw === null ? 'kept' : local.write(key, raw) });
  }, []);

  const isKeeping = keeping.state !== 'waiting' && keeping.state !== 'damaged' && keeping.state !== 'elsewhere';
  // biome-ignore lint/correctness/useExhaustiveDependencies: written once a change of the text.
  useEffect(() => {
    if (!isKeeping || written.current === text) return;
    if (isOthers()) {
      setKeeping({ state: 'elsewhere' });
      return;
    }
    written.current = text;
    write(text);
  }, [text, isKeeping, key]);

  useOtherTabs(key, () => {
    if (isKeeping && isOthers()) setKeeping({ state: 'elsewhere' });
  });

  return {
    keeping,
    keepMine: () => {
      local.remove(key);
      written.current = text;
      write(text);
    },
    takeOther: () => {
      const raw = local.read(key);
      const other = raw === null ? null : readRecord(raw, exercise);
      if (!raw || !other) {
        setKeeping(raw ? { state: 'damaged', raw } : { state: 'kept' });
        return;
      }
      written.current = printRecord(other);
      lying.current = raw;
      takeUp(other, 'other');
      setKeeping({ state: 'kept' });
    },
  };
}
