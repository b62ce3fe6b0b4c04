import type { RefObject } from 'preact';
import { useLayoutEffect, useRef, useState } from 'preact/hooks';

/** A form that a button opens in its own place. */
export interface FormOpen {
  readonly isOpen: boolean;
  readonly open: () => void;
  readonly close: () => void;
  /** The button, on which whoever leaves the form stands again. */
  readonly opener: RefObject<HTMLButtonElement>;
}

export function useFormOpen(): FormOpen {
  const [isOpen, setOpen] = useState(false);
  const opener = useRef<HTMLButtonElement>(null);
  const wasOpen = useRef(false);
  useLayoutEffect(() => {
    if (wasOpen.current && !isOpen) opener.current?.focus();
    wasOpen.current = isOpen;
  }, [isOpen]);
  return { isOpen, open: () => setOpen(true), close: () => setOpen(false), opener };
}
