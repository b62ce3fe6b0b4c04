import { useEffect, useMemo, useState } from 'preact/hooks';
import type { Reader } from '../words/say.ts';
import type { Unit } from '../words/unit.ts';

/** The reader, in the unit the page is in: the course's switch sets `data-unit` on the root. Centimetres as built. */
export function useReader(language: string): Reader {
  const [unit, setUnit] = useState<Unit>('cm');
  useEffect(() => {
    const root = document.documentElement;
    const take = (): void => setUnit(root.dataset.unit === 'in' ? 'in' : 'cm');
    take();
    const watch = new MutationObserver(take);
    watch.observe(root, { attributes: true, attributeFilter: ['data-unit'] });
    return () => watch.disconnect();
  }, []);
  return useMemo(() => ({ language, unit }), [language, unit]);
}
