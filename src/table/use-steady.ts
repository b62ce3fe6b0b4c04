import { useRef } from 'preact/hooks';
import { steady } from './model/steady.ts';

/** Plain data as they are now, as much of them the very thing of the last time as has not changed. */
export function useSteady<Data>(now: Data): Data {
  const before = useRef(now);
  before.current = steady(now, before.current);
  return before.current;
}
