import { useLayoutEffect } from 'preact/hooks';

/** Lets the browser ask before the page is left with what is kept nowhere. */
export function useWarning(unkept: boolean): void {
  useLayoutEffect(() => {
    if (!unkept) return;
    const ask = (event: BeforeUnloadEvent): void => event.preventDefault();
    window.addEventListener('beforeunload', ask);
    return () => window.removeEventListener('beforeunload', ask);
  }, [unkept]);
}
