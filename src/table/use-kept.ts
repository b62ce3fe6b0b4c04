import { useEffect, useRef, useState } from 'preact/hooks';
import type { Exercise } from '../grader/exercise.ts';
import { type DraftRecord, keyOf, printRecord, readRecord } from './store/record.ts';
import { type Kept, storageIn } from './store/storage.ts';

/** How keeping the draft goes. `damaged` holds the raw text that could not be read. */
export type Keeping =
  | { readonly state: 'waiting' }
  | { readonly state: Kept }
  | { readonly state: 'damaged'; readonly raw: string };

interface KeptDraft {
  readonly keeping: Keeping;
  /** Forgets the damaged record and keeps from now on. */
  readonly startClean: () => void;
}

const local = storageIn(() => window.localStorage);

/** Takes up the kept draft once the page is awake, and keeps every change from then on. */
export function useKept(
  exercise: Exercise,
  set: string | null,
  record: DraftRecord,
  takeUp: (record: DraftRecord) => void,
): KeptDraft {
  const [keeping, setKeeping] = useState<Keeping>({ state: 'waiting' });
  const key = keyOf(exercise.id, set);
  const written = useRef<string | null>(null);
  const text = printRecord(record);

  // biome-ignore lint/correctness/useExhaustiveDependencies: the kept draft is taken up once, as the page wakes.
  useEffect(() => {
    const raw = local.read(key);
    const kept = raw === null ? null : readRecord(raw, exercise);
    if (raw !== null && !kept) {
      setKeeping({ state: 'damaged', raw });
      return;
    }
    written.current = kept ? printRecord(kept) : text;
    if (kept) takeUp(kept);
    setKeeping({ state: raw === null ? 'kept' : local.write(key, raw) });
  }, []);

  useEffect(() => {
    if (keeping.state === 'waiting' || keeping.state === 'damaged' || written.current === text) return;
    written.current = text;
    setKeeping({ state: local.write(key, text) });
  }, [text, keeping, key]);

  const startClean = (): void => {
    local.remove(key);
    setKeeping({ state: local.write(key, text) });
  };
  return { keeping, startClean };
}
