import type { Reader } from '../../words/say.ts';
import type { Quantity } from '../quantity.ts';

/** What is known to whoever speaks: the reader, and the measures that expressions name, where they are at hand. */
export interface Speaker {
  readonly reader: Reader;
  readonly measures: ReadonlyMap<string, Quantity> | null;
  /** How a length written as a number is shown: as it was typed, or in the reader's unit. */
  readonly numbers: Numbers;
}

/** A student's numbers stand as typed. An author's are for readers of both units. */
export type Numbers = 'as-typed' | 'in-reader-unit';
