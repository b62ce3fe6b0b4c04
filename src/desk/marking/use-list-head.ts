import type { RefObject } from 'preact';
import { useRef } from 'preact/hooks';

/**
 * The head of a list from which things are taken off: whoever took one off stands at the head then, or at the gradebook where
 * it was the last. `count` is how many there are.
 */
export function useListHead(count: number): {
  readonly head: RefObject<HTMLHeadingElement>;
  readonly after: (takeOff: () => void) => void;
} {
  const head = useRef<HTMLHeadingElement>(null);
  const after = (takeOff: () => void): void => {
    const place = count > 1 ? head.current : document.querySelector<HTMLElement>('#mark-book');
    place?.focus({ preventScroll: count > 1 });
    takeOff();
  };
  return { head, after };
}
