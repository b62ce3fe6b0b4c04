import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import { useMedia } from './use-media.ts';

/** How far something that moves has come, 0 to 1, and what can be done about it. */
export interface Stages {
  readonly fraction: number;
  readonly moving: boolean;
  /** Whether the reader asked for less motion: nothing moves then, and it is stepped through. */
  readonly still: boolean;
  readonly run: () => void;
  readonly goTo: (fraction: number) => void;
}

/**
 * Something that moves from 0 to 1 in `seconds`. It stands at its end as built, on paper, and until it is moved; `begin`
 * sets it moving once when it opens. A moment asked for stops the movement.
 */
export function useStages(seconds: number, begin: boolean): Stages {
  const still = useMedia('(prefers-reduced-motion: reduce)');
  const printing = useMedia('print');
  const [fraction, setFraction] = useState(1);
  const [moving, setMoving] = useState(false);
  const frame = useRef(0);
  const stop = (): void => {
    cancelAnimationFrame(frame.current);
    setMoving(false);
  };
  const run = (): void => {
    stop();
    setMoving(true);
    const from = performance.now();
    const next = (now: number): void => {
      const part = Math.min(1, Math.max(0, (now - from) / (seconds * 1000)));
      setFraction(eased(part));
      if (part < 1) frame.current = requestAnimationFrame(next);
      else setMoving(false);
    };
    setFraction(0);
    frame.current = requestAnimationFrame(next);
  };
  // Before it is seen: for a moment it would stand at its end, and be taken for what has moved already.
  // biome-ignore lint/correctness/useExhaustiveDependencies: it begins by itself once, when it opens.
  useLayoutEffect(() => {
    if (begin && !matchMedia('(prefers-reduced-motion: reduce)').matches) run();
    return () => cancelAnimationFrame(frame.current);
  }, []);
  return {
    fraction: printing ? 1 : fraction,
    moving,
    still,
    run,
    goTo: (to) => {
      stop();
      setFraction(to);
    },
  };
}

/** Slow at both ends, as a hand moves. */
function eased(part: number): number {
  return (1 - Math.cos(Math.PI * part)) / 2;
}
