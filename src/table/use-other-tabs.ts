import { useLayoutEffect, useRef } from 'preact/hooks';

/** Calls back when another tab or window of this browser has changed what is kept under a name, or comes to light again. */
export function useOtherTabs(key: string, onChange: () => void): void {
  const now = useRef(onChange);
  now.current = onChange;
  useLayoutEffect(() => {
    const changed = (event: StorageEvent): void => {
      if (event.key === key && event.newValue !== null) now.current();
    };
    // A page that was put aside is told nothing.
    const back = (): void => now.current();
    window.addEventListener('storage', changed);
    window.addEventListener('pageshow', back);
    return () => {
      window.removeEventListener('storage', changed);
      window.removeEventListener('pageshow', back);
    };
  }, [key]);
}
