import type { Exercise } from '../grader/exercise.ts';
import type { Onward } from './onward.ts';
import type { SetInHand } from './set-in-hand.ts';

/** What a table is laid for. */
export interface TableProps {
  readonly exercise: Exercise;
  /** The problem set it is done for, whose conditions hold; its draft is kept apart. */
  readonly inSet?: SetInHand | null;
  /** Where the set lies, from the page's own address. */
  readonly wayBack?: string;
  /** What comes next; null where nothing does. */
  readonly onward?: Onward | null;
  /** Decides the figure of an exercise that samples one. */
  readonly seed?: string;
  readonly language?: string;
}
