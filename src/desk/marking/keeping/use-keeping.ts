import { useEffect, useRef, useState } from 'preact/hooks';
import type { MarkingFile } from '../../../exchange/marking-file/marking-file.ts';
import type { MarkingDesk } from '../use-marking-desk.ts';
import { browserShelf } from './browser-shelf.ts';
import { Keeper, type Keeping } from './keeper.ts';
import { readApart } from './read-apart.ts';
import { isBare, workOf } from './work-of.ts';

export interface DeskKeeping {
  readonly keeping: Keeping;
  /** Whether what lies there could not be fetched to be read. */
  readonly failed: boolean;
  /** Opens what lies there on top of what lies on the desk. */
  readonly goOn: () => Promise<void>;
  /** Opens what lies there in place of what lies on the desk. */
  readonly takeOther: () => Promise<void>;
  /** Keeps what lies on the desk over what lies there. */
  readonly keepMine: () => Promise<void>;
  /** Takes away what lies there. */
  readonly putAway: () => Promise<void>;
  /** The text of what lies there; null where nothing does. */
  readonly text: () => Promise<string | null>;
}

/** So long after a change the work is kept, ms; and so many times as long as keeping took, where a class is large. */
const PAUSE = 400;
const PATIENCE = 20;

/** Keeps all the work on the desk in this browser as it changes, and beside what other tabs keep there. */
export function useKeeping(desk: MarkingDesk, exercises: readonly string[]): DeskKeeping {
  const [keeping, setKeeping] = useState<Keeping>({ state: 'waiting' });
  const [failed, setFailed] = useState(false);
  const keeper = useRef<Keeper | null>(null);
  const others = useOthers(() => keeper.current?.look());
  /** What was kept or taken up last: opening work is no change of it. */
  const lying = useRef('');
  const write = useKeepingTimes(desk, async (work) => {
    if (work === null) setKeeping({ state: 'full' });
    else if (contentOf(work.text) !== lying.current) {
      const kept = await keeper.current?.keep(work);
      if (kept !== 'kept') return;
      lying.current = contentOf(work.text);
      others();
    }
  });
  // biome-ignore lint/correctness/useExhaustiveDependencies: a keeper for as long as the page lives.
  useEffect(() => {
    keeper.current = new Keeper(browserShelf(), freshStamp, setKeeping);
    keeper.current.look().then(write);
  }, []);
  const { pieces, students } = desk.held.notes;
  useWarning(keeping.state !== 'kept' && pieces.size + students.size > 0);
  const open = async (how: (file: MarkingFile) => void): Promise<void> => {
    const found = await keeper.current?.read();
    if (!found) return;
    const read = await readApart(found.text, exercises);
    setFailed(read === null);
    if (read?.ok) {
      keeper.current?.took(found);
      lying.current = contentOf(found.text);
      how(read.file);
    } else if (read) keeper.current?.foundDamaged(found);
  };
  return {
    keeping,
    failed,
    goOn: () => open(desk.open),
    takeOther: () =>
      open((file) => {
        desk.clear();
        desk.open(file);
      }),
    keepMine: async () => {
      const work = workOf(desk.held, new Date().toISOString());
      if (work) await keeper.current?.keepOver(work);
      others();
    },
    putAway: async () => {
      await keeper.current?.remove();
      lying.current = '';
      others();
      write();
    },
    text: async () => (await keeper.current?.read())?.text ?? null,
  };
}

/** Keeps the work a while after it changed, and at once when the page is left; what is given keeps it, too, without a change. */
function useKeepingTimes({ held }: MarkingDesk, keep: (work: ReturnType<typeof workOf>) => Promise<void>): () => void {
  const latest = useRef({ held, keep });
  latest.current = { held, keep };
  const timer = useRef<ReturnType<typeof setTimeout> | null>(null);
  const pause = useRef(PAUSE);
  const keepNow = async (): Promise<void> => {
    timer.current = null;
    if (isBare(latest.current.held)) return;
    const begun = performance.now();
    await latest.current.keep(workOf(latest.current.held, new Date().toISOString()));
    pause.current = Math.max(PAUSE, PATIENCE * (performance.now() - begun));
  };
  const write = (): void => {
    timer.current ??= setTimeout(keepNow, pause.current);
  };
  const flush = async (): Promise<void> => {
    if (timer.current === null) return;
    clearTimeout(timer.current);
    await keepNow();
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: whatever changed on the desk is kept.
  useEffect(write, [held]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: listens for as long as the page lives.
  useEffect(() => {
    const hidden = async (): Promise<void> => {
      if (document.visibilityState === 'hidden') await flush();
    };
    document.addEventListener('visibilitychange', hidden);
    window.addEventListener('pagehide', flush);
    return () => {
      document.removeEventListener('visibilitychange', hidden);
      window.removeEventListener('pagehide', flush);
    };
  }, []);
  return write;
}

/** Calls back when another tab has kept something, or this page comes back to light; the answer tells the others. */
function useOthers(onChange: () => void): () => void {
  const channel = useRef<BroadcastChannel | null>(null);
  const now = useRef(onChange);
  now.current = onChange;
  useEffect(() => {
    const opened = new BroadcastChannel('gorgeline.desk.marking');
    channel.current = opened;
    const changed = (): void => now.current();
    // A page that was put aside is told nothing.
    opened.addEventListener('message', changed);
    window.addEventListener('pageshow', changed);
    return () => {
      window.removeEventListener('pageshow', changed);
      opened.close();
    };
  }, []);
  return () => channel.current?.postMessage('changed');
}

/** Lets the browser ask before the page is left with what is kept nowhere. */
function useWarning(unkept: boolean): void {
  useEffect(() => {
    if (!unkept) return;
    const ask = (event: BeforeUnloadEvent): void => event.preventDefault();
    window.addEventListener('beforeunload', ask);
    return () => window.removeEventListener('beforeunload', ask);
  }, [unkept]);
}

/** A marking file's text without the moment it was saved at. */
function contentOf(text: string): string {
  return text.replace(/^ {2}"saved": .*$/m, '');
}

/** Another one at every call: the moment, and chance beside it for two tabs of one moment. */
function freshStamp(): string {
  return `${Date.now().toString(36)}-${Math.random().toString(36).slice(2)}`;
}
