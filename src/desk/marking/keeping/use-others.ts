import { useEffect, useRef } from 'preact/hooks';

/** Calls back when another tab has kept something, or this page comes back to light; the answer tells the others. */
export function useOthers(onChange: () => void): () => void {
  const channel = useRef<BroadcastChannel | null>(null);
  const now = useRef(onChange);
  now.current = onChange;
  useEffect(() => {
    const opened = new BroadcastChannel('gorgeline.desk.marking');
    channel.current = opened;
    const changed = (): void => now.current();
    // A page that was put aside is told nothing.
    opened.addEventListener('message', changed);
    window.addEventListener('pageshow', changed);
    return () => {
      window.removeEventListener('pageshow', changed);
      opened.close();
    };
  }, []);
  return () => channel.current?.postMessage('changed');
}
