import type { RefObject } from 'preact';
import { useEffect, useState } from 'preact/hooks';

/** So far before it comes into view something is drawn. */
const AHEAD = '600px';

/** Whether an element is in view or nearly so, or has been; or the page is about to be printed. */
export function useSeen(element: RefObject<Element>): boolean {
  const [seen, setSeen] = useState(false);
  useEffect(() => {
    const { current } = element;
    if (seen || current === null) return;
    const see = (): void => setSeen(true);
    const watch = new IntersectionObserver((entries) => entries.some((one) => one.isIntersecting) && see(), {
      rootMargin: AHEAD,
    });
    watch.observe(current);
    window.addEventListener('beforeprint', see);
    return () => {
      watch.disconnect();
      window.removeEventListener('beforeprint', see);
    };
  }, [element, seen]);
  return seen;
}
