import { useLayoutEffect, useRef } from 'preact/hooks';

/**
 * Does something as the page is left, closed or put out of sight. What takes up what is being written does so as the event is
 * on its way down, and what keeps it, `afterwards`, on its way up.
 */
export function useLeaving(act: () => void | Promise<void>, when: 'first' | 'afterwards' = 'first'): void {
  const latest = useRef(act);
  latest.current = act;
  useLayoutEffect(() => {
    const capture = when === 'first';
    const left = async (): Promise<void> => await latest.current();
    const hidden = async (): Promise<void> => {
      if (document.visibilityState === 'hidden') await left();
    };
    document.addEventListener('visibilitychange', hidden, { capture });
    window.addEventListener('pagehide', left, { capture });
    return () => {
      document.removeEventListener('visibilitychange', hidden, { capture });
      window.removeEventListener('pagehide', left, { capture });
    };
  }, [when]);
}
