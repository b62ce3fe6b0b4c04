import type { ClassWork } from '../../../exchange/class/class-work.ts';
import type { Entry } from '../../../exchange/class/gradebook.ts';
import type { Sketch } from '../../../exchange/class/laid/sketch.ts';
import type { WayGone } from '../../../exchange/class/ways.ts';
import type { WorkRow } from '../../../exchange/grade-row.ts';
import type { HandIn } from '../../../exchange/hand-in.ts';
import type { MarkingFile } from '../../../exchange/marking-file/marking-file.ts';
import type { ProblemSet } from '../../../exchange/set.ts';
import type { Refused } from './refused.ts';

/** A file as it was dropped on the desk. */
export interface Dropped {
  /** Its name, with the folders it lay in. */
  readonly name: string;
  readonly size: number;
  readonly text: () => Promise<string>;
  /** The beginning of its text. */
  readonly head: () => Promise<string>;
}

/** A piece of work that was read already. */
export interface Laid {
  readonly found: string;
  readonly handIn: HandIn;
}

/** What is taken in: files as they were dropped, and pieces that lay there before. */
export interface Pile {
  readonly files: readonly Dropped[];
  readonly pieces: readonly Laid[];
}

/** What is said of one piece of work that was taken in. */
export type Taken =
  | {
      readonly ok: true;
      readonly handIn: HandIn;
      readonly row: WorkRow;
      readonly entry: Entry;
      readonly kept: ClassWork;
      readonly sketch: Sketch;
      readonly ways: readonly WayGone[];
    }
  | Refused;

/** A piece of work that was read and marked. */
export type Sound = Extract<Taken, { readonly ok: true }>;

/** What becomes of a pile: the set it is marked by, if one lies among the files, then piece after piece. */
export type Intake =
  | { readonly kind: 'set'; readonly set: ProblemSet }
  /** A marking file that was saved before: its pieces are not marked yet. Its set has been told of before it. */
  | { readonly kind: 'marking'; readonly file: MarkingFile }
  | { readonly kind: 'taken'; readonly taken: Taken }
  /** A file is done, with so many characters. */
  | { readonly kind: 'done'; readonly name: string; readonly size: number };
