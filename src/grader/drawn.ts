import type { Replayed } from '../drafting/sheet.ts';
import type { Step } from '../drafting/step.ts';

/** A draft and what it makes. */
export interface Drawn {
  readonly steps: readonly Step[];
  readonly sheet: Replayed;
}

/** How many grounds may still be drawn in search of slips: a draft with many faults is marked as soon as another. */
export interface Tries {
  left: number;
}
