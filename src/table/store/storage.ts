/** How a text was kept, or why it was not. */
export type Kept = 'kept' | 'full' | 'forbidden';

/** A place to keep texts by name. Nothing here throws. */
export interface Storage {
  readonly read: (key: string) => string | null;
  readonly write: (key: string, text: string) => Kept;
  readonly remove: (key: string) => void;
}

type Place = Pick<globalThis.Storage, 'getItem' | 'setItem' | 'removeItem'>;

/**
 * The browser's own storage, with what could not be written kept in memory for as long as the page lives. `place` is
 * asked for at every use: a browser may forbid even to look at it.
 */
export function storageIn(place: () => Place): Storage {
  const memory = new Map<string, string>();
  return {
    read: (key) => memory.get(key) ?? attempt(() => place().getItem(key), null),
    write: (key, text) => {
      const kept = keep(place, key, text);
      if (kept === 'kept') memory.delete(key);
      else memory.set(key, text);
      return kept;
    },
    remove: (key) => {
      memory.delete(key);
      attempt(() => place().removeItem(key), undefined);
    },
  };
}

function keep(place: () => Place, key: string, text: string): Kept {
  try {
    place().setItem(key, text);
    return 'kept';
  } catch (error) {
    return isFull(error) ? 'full' : 'forbidden';
  }
}

/** Whether a browser refused to keep something because there is no room. */
export function isFull(error: unknown): boolean {
  return (
    error instanceof DOMException &&
    (error.name === 'QuotaExceededError' || error.name === 'NS_ERROR_DOM_QUOTA_REACHED')
  );
}

function attempt<T>(what: () => T, otherwise: T): T {
  try {
    return what();
  } catch {
    return otherwise;
  }
}
