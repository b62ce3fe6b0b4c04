import { useRef, useState } from 'preact/hooks';

/** The feedback sheets as they lie open on the page, or not. */
export interface SheetsOpen {
  /** Whose sheet is asked for, as in `choice.ts`; null while none lies open. */
  readonly whose: string | null;
  /** Another number every time they are opened. */
  readonly times: number;
  readonly open: (whose: string) => void;
  /** Closes them; whoever opened them stands again where that was done. */
  readonly close: () => void;
}

export function useSheetsOpen(): SheetsOpen {
  const [{ whose, times }, setOpen] = useState<Pick<SheetsOpen, 'whose' | 'times'>>({ whose: null, times: 0 });
  const opener = useRef<Element | null>(null);
  return {
    whose,
    times,
    open: (asked) => {
      opener.current = document.activeElement;
      setOpen({ whose: asked, times: times + 1 });
    },
    close: () => {
      setOpen({ whose: null, times });
      if (opener.current instanceof HTMLElement) opener.current.focus();
    },
  };
}
