import { useEffect, useRef, useState } from 'preact/hooks';
import type { Name } from '../../drafting/step.ts';
import { type Kept, storageIn } from '../../table/store/storage.ts';
import { asWritten, type Change, freshSheet, printSheet, type Sheet, takeUpSheet, type UnreadSheet } from './sheet.ts';

const KEY = 'gorgeline.desk.set';

const local = storageIn(() => window.localStorage);

export interface SetSheet {
  readonly sheet: Sheet;
  readonly change: Change;
  readonly clear: () => void;
  /** How it was kept; null before the page is awake, and while one lies there that cannot be read. */
  readonly kept: Kept | null;
  /** What lies there and cannot be read: nothing is kept over it before another set is begun. */
  readonly unread: UnreadSheet | null;
}

/** The set on the desk, kept in this browser with every change. */
export function useSetSheet(exercises: readonly Name[], title: string): SetSheet {
  const [sheet, setSheet] = useState<Sheet>(() => freshSheet(title, 'first'));
  const [kept, setKept] = useState<Kept | null>(null);
  const [unread, setUnread] = useState<UnreadSheet | null>(null);
  const latest = useRef(sheet);
  const change: Change = (update) => {
    const next = asWritten(update(latest.current));
    latest.current = next;
    setSheet(next);
    setKept(local.write(KEY, printSheet(next)));
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: what was kept is taken up once, as the page wakes.
  useEffect(() => {
    const found = takeUpSheet(local.read(KEY), exercises);
    if (found !== null && 'why' in found) setUnread(found);
    else change(() => found ?? freshSheet(title, freshSeed()));
  }, []);
  const clear = (): void => {
    setUnread(null);
    change(() => freshSheet(title, freshSeed()));
  };
  return { sheet, change, clear, kept, unread };
}

/** A seed nobody has used: which figures it deals is chance, once. */
export function freshSeed(): string {
  return Math.random().toString(36).slice(2, 10);
}
