import type { RefObject } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';

/** By then a page that was scrolling has come to rest, ms. */
const SCROLLED = 500;

/**
 * Brings the sentence into sight, with the sheet it is worked on with, once a tool is taken. `toFirst` counts up when it was taken by
 * keys: its first blank then has the focus.
 */
export function useInSight(line: RefObject<HTMLElement>, inHand: boolean, toFirst: number): void {
  const keyed = useRef(toFirst);
  // biome-ignore lint/correctness/useExhaustiveDependencies: it is brought into sight once a tool is taken.
  useLayoutEffect(() => {
    if (!inHand) return;
    show(line.current);
    const byKeys = keyed.current !== toFirst;
    // Under a hand that points, the page is not to move again.
    if (!byKeys) return;
    // The page may still be scrolling to the tool that was reached by Tab, and goes on to where it was going.
    const again = setTimeout(() => show(line.current), SCROLLED);
    const leave = (): void => clearTimeout(again);
    window.addEventListener('pointerdown', leave, { once: true });
    return () => {
      leave();
      window.removeEventListener('pointerdown', leave);
    };
  }, [inHand]);
  // biome-ignore lint/correctness/useExhaustiveDependencies: the focus goes there once a tool is taken by keys.
  useLayoutEffect(() => {
    keyed.current = toFirst;
    if (toFirst > 0) line.current?.querySelector<HTMLInputElement>('.blank-input')?.focus();
  }, [toFirst]);
}

/** The sheet and the sentence are worked on together. */
function show(line: HTMLElement | null): void {
  for (const part of [line?.parentElement, line]) part?.scrollIntoView({ block: 'nearest', behavior: 'instant' });
}
