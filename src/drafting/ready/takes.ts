import type { Input } from '../input.ts';

/** Takes a blank whose names are numbered, from what lies there under those numbers; undefined where it cannot be taken. */
export type Taker = (inputs: readonly Input[]) => unknown;
