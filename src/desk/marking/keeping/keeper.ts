import type { Kept } from '../../../table/store/storage.ts';
import type { Label, Shelf, Shelved, Summary } from './shelf.ts';

/**
 * How keeping goes. `offered`: work of another day lies on the shelf, and nothing is kept over it before the teacher says
 * what is to become of it. `elsewhere`: another tab has put other work there meanwhile. `damaged` holds the text that could not be read.
 */
export type Keeping =
  | { readonly state: 'waiting' }
  | { readonly state: 'offered'; readonly summary: Summary | null }
  | { readonly state: 'damaged'; readonly raw: string }
  | { readonly state: 'elsewhere' }
  | { readonly state: Kept };

/** What is kept: all the work as a marking file, and what is told of it. */
export type Work = Omit<Shelved, 'stamp'>;

/** Keeps the work of one tab on a shelf that other tabs use too, one thing after another, and tells how that goes. */
export class Keeper {
  /** The stamp of what this tab put there or took from there last; null where it did neither. */
  private stamp: string | null = null;
  /** The stamp of what is being put there. */
  private putting: string | null = null;
  /** The stamp of what the teacher was last told of. */
  private seen: string | null = null;
  private state: Keeping = { state: 'waiting' };
  private last: Promise<unknown> = Promise.resolve();
  private readonly shelf: Shelf;
  private readonly freshStamp: () => string;
  private readonly tell: (keeping: Keeping) => void;

  constructor(shelf: Shelf, freshStamp: () => string, tell: (keeping: Keeping) => void) {
    this.shelf = shelf;
    this.freshStamp = freshStamp;
    this.tell = tell;
  }

  /** Looks at the shelf: when another tab has written, and when the page comes back to light. */
  look(): Promise<void> {
    return this.inTurn(() => this.lookNow());
  }

  /** Looks at the shelf as the page wakes: what the page before it was left with is put there first. */
  wake(): Promise<void> {
    return this.inTurn(async () => {
      await this.shelf.finish();
      await this.lookNow();
    });
  }

  /** Keeps the work, unless something there waits for the teacher's word; gives how it goes then. */
  keep(work: Work): Promise<Keeping['state']> {
    return this.inTurn(() => this.keepNow({ ...work, stamp: this.freshStamp() }));
  }

  /** The same as the page is left. Its turn may never come, so it is noted at once, over what is being put there, too. */
  async leave(work: Work): Promise<Keeping['state']> {
    if (this.isWaiting()) return this.state.state;
    const last = { ...work, stamp: this.freshStamp() };
    this.shelf.note(last, [this.stamp, ...(this.putting === null ? [] : [this.putting])]);
    const kept = await this.inTurn(() => this.keepNow(last));
    this.shelf.forget();
    return kept;
  }

  /** Keeps this tab's work over what the other tab has put there. */
  keepOver(work: Work): Promise<void> {
    return this.inTurn(async () => {
      const found = await this.shelf.look();
      if (found !== null && found !== 'forbidden') this.stamp = found.stamp;
      this.put({ state: 'kept' });
      await this.keepNow({ ...work, stamp: this.freshStamp() });
    });
  }

  /** What lies there, to be opened or saved; null where nothing does, or it may not be looked at. */
  read(): Promise<Shelved | null> {
    return this.inTurn(async () => {
      const found = await this.shelf.read();
      if (found !== null && found !== 'forbidden') return found;
      await this.lookNow();
      return null;
    });
  }

  /** What was read has been opened: from now on this tab keeps over it. */
  took({ stamp }: Label): void {
    this.stamp = stamp;
    this.put({ state: 'kept' });
  }

  /** What was read could not be opened. */
  foundDamaged({ stamp, text }: Shelved): void {
    this.seen = stamp;
    this.put({ state: 'damaged', raw: text });
  }

  /** Takes away what lies there, where it is this tab's own or what the teacher was told of. */
  remove(): Promise<void> {
    return this.inTurn(async () => {
      const over = this.stamp ?? this.seen;
      if (over === null) return;
      const gone = await this.shelf.remove(over);
      if (gone === 'elsewhere') {
        await this.lookNow();
        return;
      }
      this.stamp = null;
      this.seen = null;
      this.put({ state: gone === 'removed' ? 'kept' : gone });
    });
  }

  private async lookNow(): Promise<void> {
    const found = await this.shelf.look();
    if (found === 'forbidden') this.put({ state: 'forbidden' });
    else if (found === null || found.stamp === this.stamp) this.settle();
    else if (this.stamp !== null) this.put({ state: 'elsewhere' });
    else if (this.state.state !== 'damaged' || found.stamp !== this.seen) {
      this.seen = found.stamp;
      this.put({ state: 'offered', summary: found.summary });
    }
  }

  private async keepNow(work: Shelved): Promise<Keeping['state']> {
    if (this.isWaiting()) return this.state.state;
    this.putting = work.stamp;
    const kept = await this.shelf.put(work, this.stamp);
    this.putting = null;
    if (kept === 'kept') this.stamp = work.stamp;
    if (kept === 'elsewhere') await this.lookNow();
    else this.put({ state: kept });
    return this.state.state;
  }

  private isWaiting(): boolean {
    return ['waiting', 'offered', 'damaged', 'elsewhere'].includes(this.state.state);
  }

  /** Nothing stands in the way any more. */
  private settle(): void {
    if (this.isWaiting()) this.put({ state: 'kept' });
  }

  private put(state: Keeping): void {
    this.state = state;
    this.tell(state);
  }

  private inTurn<T>(what: () => Promise<T>): Promise<T> {
    const now = this.last.then(what);
    this.last = now.catch(() => undefined);
    return now;
  }
}
