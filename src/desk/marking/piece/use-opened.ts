import { useMemo, useRef, useState } from 'preact/hooks';
import { handInLine } from '../../../exchange/notes/draft-key.ts';
import type { Sound } from '../intake/taken.ts';

/** The piece of work that lies open. */
export interface Opened {
  readonly piece: Sound | null;
  /** Opens a piece; what has the focus by then gets it back when the piece is closed. */
  readonly open: (piece: Sound) => void;
  readonly close: () => void;
}

/** Which piece of work lies open. It stays so when it is marked again by another set, and closes when it is taken off the desk. */
export function useOpened(sound: readonly Sound[]): Opened {
  const [line, setLine] = useState<string | null>(null);
  const opener = useRef<HTMLElement | null>(null);
  const piece = useMemo(
    () => (line === null ? null : (sound.find(({ handIn }) => handInLine(handIn) === line) ?? null)),
    [sound, line],
  );
  return {
    piece,
    open: ({ handIn }) => {
      const { activeElement } = document;
      // From one piece to another of the same student it is still the first opener that is gone back to.
      if (activeElement instanceof HTMLElement && !activeElement.closest('.piece-open')) opener.current = activeElement;
      setLine(handInLine(handIn));
    },
    close: () => {
      setLine(null);
      opener.current?.focus();
    },
  };
}
