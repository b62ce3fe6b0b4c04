import { useEffect, useReducer, useRef } from 'preact/hooks';

/** What has not changed for this long is calm, ms. */
const CALM = 120;

/**
 * A value that many things hang on, kept as it was while it changes at every move of a hand: brought up to date once it is calm,
 * or nothing moves it any more.
 */
export function useCalm<T>(value: T, moving: boolean): T {
  const kept = useRef(value);
  const [, showAgain] = useReducer((turns: number) => turns + 1, 0);
  if (!moving) kept.current = value;
  useEffect(() => {
    if (kept.current === value) return;
    const timer = setTimeout(() => {
      kept.current = value;
      showAgain(null);
    }, CALM);
    return () => clearTimeout(timer);
  }, [value]);
  return kept.current;
}
