import type { VNode } from 'preact';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';
import type { Say } from '../say.ts';

/** The blank that is next, in a sentence. */
export const NEXT_BLANK = '.blank[data-current="true"] .blank-input';
/** A blank with words in it that could not be read: to draw on without them would leave out what was meant. */
export const UNREAD_BLANK = '.blank[data-unread="true"] .blank-input';

interface DrawItProps {
  /** Whether every blank is filled that has to be. */
  readonly complete: boolean;
  readonly say: Say;
  readonly onDraw: () => void;
}

/**
 * Draws what is complete; otherwise leads to the blank that is next. It can always be pressed: whoever presses it straight from
 * typing has not left the blank yet, and what was typed there is taken first.
 */
export function DrawIt({ complete, say, onDraw }: DrawItProps): VNode {
  const button = useRef<HTMLButtonElement>(null);
  const [pressed, setPressed] = useState(0);
  const press = (): void => {
    const { activeElement } = document;
    if (activeElement instanceof HTMLInputElement) activeElement.blur();
    setPressed(pressed + 1);
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: once a press, with what was taken by it.
  useLayoutEffect(() => {
    if (pressed === 0) return;
    if (complete) onDraw();
    else button.current?.closest('.sentence')?.querySelector<HTMLElement>(NEXT_BLANK)?.focus();
  }, [pressed]);
  return (
    <button
      ref={button}
      type="button"
      class="button button--first"
      data-do="draw"
      aria-disabled={complete ? undefined : true}
      // The blank is left once it is pressed, and not before: what then changes would move the button away under the hand.
      onPointerDown={(event) => event.preventDefault()}
      onClick={press}
    >
      {say('table.draw')}
    </button>
  );
}
