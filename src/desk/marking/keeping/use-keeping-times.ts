import { useEffect, useRef } from 'preact/hooks';
import type { Held } from '../intake/piles.ts';
import { useLeaving } from '../use-leaving.ts';
import type { MarkingDesk } from '../use-marking-desk.ts';
import type { Work } from './keeper.ts';
import { isBare, workOf } from './work-of.ts';

/**
 * So long after a change the work is kept, ms; and so many times as long as keeping took, where a class is large. No longer than
 * this, however busy the machine was: so much would be lost if the browser broke down.
 */
const PAUSE = 400;
const PATIENCE = 20;
const LONGEST = 6000;

/** Whether something changed a while ago, or the page is being left with something that is not kept yet. */
export type When = 'changed' | 'leaving';

/** Keeps work. */
type Keep = (work: Work | 'bare' | 'too-much', when: When) => Promise<void>;

/** Keeps the work a while after it changed, and at once when the page is left; what is given keeps it, too, without a change. */
export function useKeepingTimes({ held, now }: MarkingDesk, keep: Keep): () => void {
  const latest = useRef(keep);
  latest.current = keep;
  const timer = useRef<ReturnType<typeof setTimeout> | null>(null);
  const pause = useRef(PAUSE);
  const given = useRef<Held | null>(null);
  const keepNow = async (when: When): Promise<void> => {
    timer.current = null;
    const work = now();
    given.current = work;
    const begun = performance.now();
    const saved = new Date().toISOString();
    await latest.current(isBare(work) ? 'bare' : (workOf(work, saved) ?? 'too-much'), when);
    pause.current = Math.min(LONGEST, Math.max(PAUSE, PATIENCE * (performance.now() - begun)));
  };
  const write = (): void => {
    timer.current ??= setTimeout(() => keepNow('changed'), pause.current);
  };
  const flush = async (): Promise<void> => {
    if (timer.current === null && now() === given.current) return;
    if (timer.current !== null) clearTimeout(timer.current);
    await keepNow('leaving');
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: whatever changed on the desk is kept.
  useEffect(write, [held]);
  useLeaving(flush, 'afterwards');
  return write;
}
