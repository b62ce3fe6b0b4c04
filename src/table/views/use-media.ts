import { useEffect, useState } from 'preact/hooks';

/** Whether a media query holds, followed as it changes. False as built. */
export function useMedia(query: string): boolean {
  const [holds, setHolds] = useState(false);
  useEffect(() => {
    const list = matchMedia(query);
    const take = (): void => setHolds(list.matches);
    take();
    list.addEventListener('change', take);
    return () => list.removeEventListener('change', take);
  }, [query]);
  return holds;
}
