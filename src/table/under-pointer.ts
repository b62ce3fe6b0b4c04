import { useLayoutEffect, useState } from 'preact/hooks';
import type { Name } from '../drafting/step.ts';
import type { Pointed } from './model/point-at.ts';

/** What lies under the pointer at this moment. */
export interface Under {
  /** How the blank in hand would be filled by a press; null where it would not be. */
  readonly pointed: Pointed | null;
  /** Objects that light up: caught by the pointer, or named by the entry of a list that it is on. */
  readonly lit: readonly Name[];
}

const NOTHING: Under = { pointed: null, lit: [] };

/**
 * What lies under the pointer, kept apart from the table's own state: it changes at every move, and then only what shows it
 * is drawn again, not the whole table.
 */
export class UnderPointer {
  #now = NOTHING;
  readonly #watchers = new Set<(now: Under) => void>();

  readonly now = (): Under => this.#now;

  /** The pointer is over the sheet with a tool in hand, or has left it (null). */
  readonly point = (pointed: Pointed | null): void => {
    if (pointed) this.#turn({ pointed, lit: pointed.caught });
    else if (this.#now !== NOTHING) this.#turn(NOTHING);
  };

  /** The pointer is on an entry that names an object, or has left it (null). */
  readonly light = (name: Name | null): void => {
    const { pointed } = this.#now;
    this.#turn(name === null && pointed === null ? NOTHING : { pointed, lit: name === null ? [] : [name] });
  };

  /** Calls at each change; what it gives ends that. */
  readonly watch = (tell: (now: Under) => void): (() => void) => {
    this.#watchers.add(tell);
    return () => {
      this.#watchers.delete(tell);
    };
  };

  #turn(to: Under): void {
    this.#now = to;
    for (const tell of this.#watchers) tell(to);
  }
}

/** What lies under the pointer, for a component that is to be drawn again at each change. */
export function useUnder(pointer: UnderPointer): Under {
  const [under, setUnder] = useState(pointer.now);
  useLayoutEffect(() => {
    setUnder(pointer.now());
    return pointer.watch(setUnder);
  }, [pointer]);
  return under;
}
