import { useLayoutEffect } from 'preact/hooks';

/** Room left beside the edge of the page, px. */
const ROOM = 8;

/** Moves what hangs on a blank toward the start of the line, as far as the page would cut it off; again whenever `shown` changes. */
export function useWithinPage(hung: { readonly current: HTMLElement | null }, shown: unknown): void {
  // biome-ignore lint/correctness/useExhaustiveDependencies: it is laid anew when something else is shown.
  useLayoutEffect(() => {
    const { current } = hung;
    if (!current) return;
    current.style.marginInlineStart = '';
    const { left, right } = current.getBoundingClientRect();
    const over = Math.min(right + ROOM - document.documentElement.clientWidth, left - ROOM);
    if (over > 0) current.style.marginInlineStart = `${-over}px`;
  }, [shown]);
}
