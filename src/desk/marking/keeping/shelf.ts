import type { Kept } from '../../../table/store/storage.ts';

/** What a teacher is told of kept work before it is opened. Nothing in it is trusted: it is only shown. */
export interface Summary {
  /** The title of the set; empty where there is none. */
  readonly title: string;
  readonly students: number;
  readonly pieces: number;
  /** When it was kept; ISO 8601. */
  readonly saved: string;
}

/** Work on its shelf: a marking file, what is told of it, and a stamp that is another after every change. */
export interface Shelved {
  readonly stamp: string;
  readonly summary: Summary | null;
  readonly text: string;
}

/** What is looked at without reading the work: a class may be large. */
export type Label = Omit<Shelved, 'text'>;

/**
 * A place in this browser for the work of one desk. Nothing here throws. What another tab has put there is never written
 * over unless its stamp is named.
 */
export interface Shelf {
  /** Null where nothing lies there. */
  readonly look: () => Promise<Label | null | 'forbidden'>;
  readonly read: () => Promise<Shelved | null | 'forbidden'>;
  /** Puts the work there, over what has the stamp `over`, or where nothing lies. */
  readonly put: (work: Shelved, over: string | null) => Promise<Kept | 'elsewhere'>;
  /**
   * Notes, at once, what is about to be put there as the page is left, over what has one of these stamps: there may be no time
   * to wait for it. `forget` it once it is there.
   */
  readonly note: (work: Shelved, over: readonly (string | null)[]) => void;
  readonly forget: () => void;
  /** Puts there what an earlier page noted and did not come to put there, unless something else lies there by now. */
  readonly finish: () => Promise<void>;
  /** Takes away what has the stamp `over`. */
  readonly remove: (over: string) => Promise<'removed' | 'elsewhere' | 'forbidden'>;
}
