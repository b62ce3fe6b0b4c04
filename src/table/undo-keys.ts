import type { Dispatch } from './use-bench.ts';

interface Press {
  readonly key: string;
  readonly ctrlKey: boolean;
  readonly metaKey: boolean;
  readonly shiftKey: boolean;
  readonly target: EventTarget | null;
  readonly preventDefault: () => void;
}

/** Undo and redo by the keys the reader's system has for them, except while words are being typed. */
export function undoKeys(event: Press, dispatch: Dispatch): void {
  if (!(event.ctrlKey || event.metaKey) || event.target instanceof HTMLInputElement) return;
  const key = event.key.toLowerCase();
  if (key !== 'z' && key !== 'y') return;
  event.preventDefault();
  dispatch({ do: key === 'y' || event.shiftKey ? 'redo' : 'undo' });
}
