import type { RefObject } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';
import type { MarkingDesk } from '../use-marking-desk.ts';
import { browserShelf } from './browser-shelf.ts';
import { Keeper, type Keeping } from './keeper.ts';
import { useKeepingTimes } from './use-keeping-times.ts';
import { useOthers } from './use-others.ts';
import { useWarning } from './use-warning.ts';

/** The keeper of this tab's work, and how keeping goes. */
export interface KeeperInHand {
  readonly keeping: Keeping;
  readonly keeper: RefObject<Keeper>;
  /** Says what text lies on the shelf now: opening work is no change of it. */
  readonly lies: (text: string) => void;
  /** Tells the other tabs that something else lies there. */
  readonly others: () => void;
  /** Keeps the work in a while. */
  readonly write: () => void;
}

/** A keeper that keeps the work on the desk as it changes, for as long as the page lives. */
export function useKeeper(desk: MarkingDesk): KeeperInHand {
  const [keeping, setKeeping] = useState<Keeping>({ state: 'waiting' });
  const keeper = useRef<Keeper | null>(null);
  const others = useOthers(() => keeper.current?.look());
  const lying = useRef('');
  const lies = (text: string): void => {
    lying.current = contentOf(text);
  };
  /** What was kept of a desk on which nothing lies any more. */
  const takeAway = async (): Promise<void> => {
    if (lying.current === '') return;
    await keeper.current?.remove();
    lies('');
    others();
  };
  const write = useKeepingTimes(desk, async (work, when) => {
    if (work === 'too-much') setKeeping({ state: 'full' });
    else if (work === 'bare') await takeAway();
    else if (contentOf(work.text) !== lying.current) {
      const kept = await (when === 'leaving' ? keeper.current?.leave(work) : keeper.current?.keep(work));
      if (kept !== 'kept') return;
      lies(work.text);
      others();
    }
  });
  // biome-ignore lint/correctness/useExhaustiveDependencies: a keeper for as long as the page lives.
  useEffect(() => {
    keeper.current = new Keeper(browserShelf(), freshStamp, setKeeping);
    keeper.current.wake().then(write);
  }, []);
  const { pieces, students } = desk.held.notes;
  useWarning(keeping.state !== 'kept' && pieces.size + students.size > 0);
  return { keeping, keeper, lies, others, write };
}

/** A marking file's text without the moment it was saved at. */
function contentOf(text: string): string {
  return text.replace(/^ {2}"saved": .*$/m, '');
}

/** Another one at every call: the moment, and chance beside it for two tabs of one moment. */
function freshStamp(): string {
  return `${Date.now().toString(36)}-${Math.random().toString(36).slice(2)}`;
}
