import type { Exercise } from '../../grader/exercise.ts';
import { type DraftRecord, printRecord, readRecord, sameDraft } from './record.ts';
import type { Kept, Storage } from './storage.ts';

/** What lies in the storage for a table: nothing, a draft, or a text that cannot be read as one. */
export type Found =
  | { readonly state: 'nothing' }
  | { readonly state: 'draft'; readonly record: DraftRecord }
  | { readonly state: 'damaged'; readonly raw: string };

/**
 * The draft that a browser keeps under a key, as one table knows it: what it wrote or took up there last. Another tab may have
 * written there since.
 */
export class KeptDraft {
  readonly #storage: Storage;
  readonly #key: string;
  readonly #exercise: Exercise;
  /** The draft as it was last written or taken up, and the text that lay in the storage then. */
  #written: string | null = null;
  #lying: string | null = null;

  constructor(storage: Storage, key: string, exercise: Exercise) {
    this.#storage = storage;
    this.#key = key;
    this.#exercise = exercise;
  }

  /** Looks what lies there, and takes up a draft: from then on it counts as this table's own. */
  take(): Found {
    const raw = this.#storage.read(this.#key);
    if (raw === null) return { state: 'nothing' };
    const record = readRecord(raw, this.#exercise);
    if (record === null) return { state: 'damaged', raw };
    this.#written = printRecord(record);
    this.#lying = raw;
    return { state: 'draft', record };
  }

  /** Begins with what lies on the table: it is written once it is changed, so that a page only looked at leaves nothing. */
  begin(text: string): void {
    this.#written = text;
  }

  /** Writes what was taken up once more, to learn whether it can be kept. */
  keepAsFound(): Kept {
    return this.#lying === null ? 'kept' : this.#storage.write(this.#key, this.#lying);
  }

  hasWritten(text: string): boolean {
    return this.#written === text;
  }

  write(text: string): Kept {
    this.#written = text;
    const kept = this.#storage.write(this.#key, text);
    this.#lying = this.#storage.read(this.#key);
    return kept;
  }

  /** Takes away what lies there, damaged or another tab's. */
  forget(): void {
    this.#storage.remove(this.#key);
  }

  /** Whether somebody else has kept a draft there that is not this one. */
  isOthers(own: DraftRecord): boolean {
    const there = this.#storage.read(this.#key);
    if (there === null || there === this.#lying) return false;
    const other = readRecord(there, this.#exercise);
    return other === null || !sameDraft(other, own);
  }
}
