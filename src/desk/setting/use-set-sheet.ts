import { useEffect, useRef, useState } from 'preact/hooks';
import type { Name } from '../../drafting/step.ts';
import { type Kept, storageIn } from '../../table/store/storage.ts';
import { asWritten, type Change, freshSheet, printSheet, type Sheet, takeUpSheet } from './sheet.ts';

const KEY = 'gorgeline.desk.set';

const local = storageIn(() => window.localStorage);

export interface SetSheet {
  readonly sheet: Sheet;
  readonly change: Change;
  readonly clear: () => void;
  /** How it was kept; null before the page is awake. */
  readonly kept: Kept | null;
}

/** The set on the desk, kept in this browser with every change. */
export function useSetSheet(exercises: readonly Name[], title: string): SetSheet {
  const [sheet, setSheet] = useState<Sheet>(() => freshSheet(title, 'first'));
  const [kept, setKept] = useState<Kept | null>(null);
  const latest = useRef(sheet);
  const change: Change = (update) => {
    const next = asWritten(update(latest.current));
    latest.current = next;
    setSheet(next);
    setKept(local.write(KEY, printSheet(next)));
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: what was kept is taken up once, as the page wakes.
  useEffect(() => {
    change(() => takeUpSheet(local.read(KEY), exercises) ?? freshSheet(title, freshSeed()));
  }, []);
  return { sheet, change, clear: () => change(() => freshSheet(title, freshSeed())), kept };
}

/** A seed nobody has used: which figures it deals is chance, once. */
export function freshSeed(): string {
  return Math.random().toString(36).slice(2, 10);
}
