import type { RefObject } from 'preact';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';

/** A button that takes away what cannot be had again, and so takes a second press. */
export interface Sure {
  readonly button: RefObject<HTMLButtonElement>;
  /** Whether it was pressed once, and does it at the next press. */
  readonly armed: boolean;
  readonly press: () => void;
}

/**
 * Does something at the second press. Whoever turns to anything else between the two, by pressing elsewhere, by going on
 * with the keyboard, or by Escape, has thought better of it: the next press is the first again.
 */
export function useSure(act: () => void): Sure {
  const button = useRef<HTMLButtonElement>(null);
  const [armed, setArmed] = useState(false);
  // Listened for before the question is seen: an Escape pressed that very moment counts.
  useLayoutEffect(() => {
    if (!armed) return;
    const elsewhere = ({ target }: Event): void => {
      if (!(target instanceof Node && button.current?.contains(target))) setArmed(false);
    };
    const leave = ({ key }: KeyboardEvent): void => {
      if (key === 'Escape') setArmed(false);
    };
    document.addEventListener('pointerdown', elsewhere);
    document.addEventListener('focusin', elsewhere);
    document.addEventListener('keydown', leave);
    return () => {
      document.removeEventListener('pointerdown', elsewhere);
      document.removeEventListener('focusin', elsewhere);
      document.removeEventListener('keydown', leave);
    };
  }, [armed]);
  const press = (): void => {
    setArmed(!armed);
    if (armed) act();
  };
  return { button, armed, press };
}
