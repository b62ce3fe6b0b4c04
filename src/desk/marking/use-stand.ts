import type { RefObject } from 'preact';
import { useLayoutEffect, useRef } from 'preact/hooks';
import type { DeskKeeping } from './keeping/use-keeping.ts';

/**
 * The same keeping, whose notice goes away with the button that was pressed in it: whoever pressed one stands at the
 * gradebook then, once it is there, or at the tray where nothing lies on the desk.
 */
export function useStand(kept: DeskKeeping, desk: RefObject<HTMLElement>, bare: boolean): DeskKeeping {
  const lost = useRef(false);
  useLayoutEffect(() => {
    if (!lost.current || desk.current?.querySelector('[data-keeping]')) return;
    // Has the reader gone on to something else meanwhile?
    if (document.activeElement !== document.body) lost.current = false;
    const place = desk.current?.querySelector<HTMLElement>(bare ? '[data-do="choose"]' : '#mark-book');
    if (!lost.current || !place) return;
    lost.current = false;
    place.focus();
  });
  const then = (what: () => Promise<void>) => (): Promise<void> => {
    lost.current = true;
    return what();
  };
  const { goOn, takeOther, keepMine, putAway } = kept;
  return {
    ...kept,
    ...{ goOn: then(goOn), takeOther: then(takeOther), keepMine: then(keepMine), putAway: then(putAway) },
  };
}
