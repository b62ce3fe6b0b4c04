import { useLayoutEffect, useMemo, useReducer, useRef } from 'preact/hooks';
import { Wait } from './wait.ts';

/** What has not changed for this long is calm, ms. */
const CALM = 120;

/**
 * A value that many things hang on, kept as it was while it changes at every move of a hand: brought up to date once it is calm,
 * or nothing moves it any more.
 */
export function useCalm<T>(value: T, moving: boolean): T {
  const kept = useRef(value);
  const [, showAgain] = useReducer((turns: number) => turns + 1, 0);
  const wait = useMemo(() => new Wait(CALM), []);
  if (!moving) kept.current = value;
  useLayoutEffect(() => {
    if (kept.current === value) wait.drop();
    else
      wait.ask(() => {
        kept.current = value;
        showAgain(null);
      });
  }, [value, wait]);
  useLayoutEffect(() => () => wait.drop(), [wait]);
  return kept.current;
}

/** Something that is made anew each time, as it was when it last lay still. */
export function useLast<T>(value: T, moving: boolean): T {
  const kept = useRef(value);
  if (!moving) kept.current = value;
  return kept.current;
}
