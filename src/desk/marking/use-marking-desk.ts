import { useRef, useState } from 'preact/hooks';
import type { ProblemSet } from '../../exchange/set.ts';
import type { Intake, Taken } from './intake.ts';
import type { Answer, Pile } from './marking-worker.ts';

/** How far a pile has come: of how many characters how many are done. */
export interface Progress {
  readonly done: number;
  readonly of: number;
}

export interface MarkingDesk {
  readonly set: ProblemSet | null;
  /** Everything taken in so far, in the order it was found. */
  readonly taken: readonly Taken[];
  /** Null while nothing is being taken in. */
  readonly progress: Progress | null;
  readonly failed: boolean;
  readonly takeIn: (files: Pile['files']) => void;
  readonly cancel: () => void;
  readonly clear: () => void;
}

interface Held {
  readonly set: ProblemSet | null;
  readonly taken: readonly Taken[];
}

const NOTHING: Held = { set: null, taken: [] };

/** What lies on the marking desk. Marking goes on in a worker of its own, so that the page stays free. */
export function useMarkingDesk(exercises: string): MarkingDesk {
  const [held, setHeld] = useState<Held>(NOTHING);
  const [progress, setProgress] = useState<Progress | null>(null);
  const [failed, setFailed] = useState(false);
  const worker = useRef<Worker | null>(null);
  const end = (): void => {
    worker.current?.terminate();
    worker.current = null;
    setProgress(null);
  };
  const hear = (answer: Answer): void => {
    if ('failed' in answer) {
      setFailed(true);
      end();
    } else if (answer.length === 0) end();
    else {
      setHeld((before) => added(before, answer));
      const done = answer.reduce((sum, one) => sum + (one.kind === 'done' ? one.size : 0), 0);
      setProgress((before) => before && { ...before, done: before.done + done });
    }
  };
  return {
    ...held,
    progress,
    failed,
    takeIn: (files) => {
      end();
      setFailed(false);
      setProgress({ done: 0, of: files.reduce((sum, { file }) => sum + file.size, 0) });
      const hired = new Worker(new URL('./marking-worker.ts', import.meta.url), { type: 'module' });
      hired.addEventListener('message', ({ data }: MessageEvent<Answer>) => hear(data));
      hired.addEventListener('error', () => hear({ failed: true }));
      worker.current = hired;
      const whole = new URL(exercises, window.location.href).href;
      hired.postMessage({ files, set: held.set, exercises: whole } satisfies Pile);
    },
    cancel: end,
    clear: () => {
      end();
      setHeld(NOTHING);
    },
  };
}

function added({ set, taken }: Held, answer: readonly Intake[]): Held {
  const sets = answer.flatMap((one) => (one.kind === 'set' ? [one.set] : []));
  return {
    set: sets.at(-1) ?? set,
    taken: [...taken, ...answer.flatMap((one) => (one.kind === 'taken' ? [one.taken] : []))],
  };
}
