import type { RefObject } from 'preact';
import { useRef } from 'preact/hooks';

interface Copying {
  /** The field in which the text stands. */
  readonly field: RefObject<HTMLInputElement>;
  readonly copy: (text: string) => Promise<void>;
}

/** Copies a text, or where the browser does not let the page, selects it to be copied by hand; `onDone` is told whether it was copied. */
export function useCopy(onDone: (copied: boolean) => void): Copying {
  const field = useRef<HTMLInputElement>(null);
  const copy = async (text: string): Promise<void> => {
    try {
      await navigator.clipboard.writeText(text);
      onDone(true);
    } catch {
      field.current?.select();
      onDone(false);
    }
  };
  return { field, copy };
}
