import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { MarkingFile } from '../../exchange/marking-file/marking-file.ts';
import type { Notes } from '../../exchange/notes/notes.ts';
import { atLeisure } from './intake/at-leisure.ts';
import { type DeskState, EMPTY_DESK, type Files, PileRunner } from './intake/pile-runner.ts';
import type { Held } from './intake/piles.ts';

export interface MarkingDesk extends DeskState {
  /** What lies there at this moment: what is shown may be a little behind. */
  readonly now: () => Held;
  readonly takeIn: (files: Files) => void;
  /** Lays down a marking file that was read already. */
  readonly open: (file: MarkingFile) => void;
  readonly cancel: () => void;
  /** Marks what was stopped before it was marked. */
  readonly goOn: () => void;
  readonly clear: () => void;
  /** Tells no more of what could not be read at a place. */
  readonly leaveOut: (where: string) => void;
  /** Changes what the teacher wrote, as it is by then. */
  readonly write: (change: (now: Notes) => Notes) => void;
}

/** While more comes in, what lies there is shown so often, ms. */
const SHOWN_EVERY = 250;

/** What lies on the marking desk, and what can be done there. `exercises` is where they lie, from the page's own address. */
export function useMarkingDesk(exercises: string): MarkingDesk {
  const [state, setState] = useState(EMPTY_DESK);
  const runner = useRef<PileRunner | null>(null);
  // Before anything on the desk wakes: the tray may have files to give at once.
  useLayoutEffect(() => {
    const tell = atLeisure<DeskState>(setState, ({ progress }) => progress === null, SHOWN_EVERY);
    runner.current = new PileRunner(new URL(exercises, window.location.href).href, tell);
    return () => runner.current?.stop();
  }, [exercises]);
  return {
    ...state,
    now: () => runner.current?.held() ?? EMPTY_DESK.held,
    takeIn: (files) => runner.current?.takeIn(files),
    open: (file) => runner.current?.open(file),
    cancel: () => runner.current?.stop(),
    goOn: () => runner.current?.goOn(),
    clear: () => runner.current?.clear(),
    leaveOut: (where) => runner.current?.leaveOut(where),
    write: (change) => runner.current?.write(change),
  };
}
