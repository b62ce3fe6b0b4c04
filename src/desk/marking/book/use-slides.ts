import type { RefObject } from 'preact';
import { useEffect, useRef, useState } from 'preact/hooks';

/** Whether more of what an element frames lies out of sight to one side, and to which. */
export interface Slides {
  readonly frame: RefObject<HTMLElement>;
  readonly before: boolean;
  readonly after: boolean;
}

/** Less than a pixel on any screen is no more to be seen. */
const NOTHING = 2;

/** Watches a frame that slides sideways where what is in it is wider. */
export function useSlides(): Slides {
  const frame = useRef<HTMLElement>(null);
  const [{ before, after }, setSlides] = useState({ before: false, after: false });
  useEffect(() => {
    const { current } = frame;
    if (current === null) return;
    const look = (): void => {
      const { scrollLeft, scrollWidth, clientWidth } = current;
      const [left, right] = [scrollLeft > NOTHING, scrollWidth - clientWidth - scrollLeft > NOTHING];
      setSlides((was) => (was.before === left && was.after === right ? was : { before: left, after: right }));
    };
    const watch = new ResizeObserver(look);
    watch.observe(current);
    for (const inside of current.children) watch.observe(inside);
    current.addEventListener('scroll', look, { passive: true });
    return () => {
      watch.disconnect();
      current.removeEventListener('scroll', look);
    };
  }, []);
  return { frame, before, after };
}
