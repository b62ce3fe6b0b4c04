import type { Givens } from '../../drafting/sheet.ts';
import type { Heading, Name, Part, Passing, Step } from '../../drafting/step.ts';
import type { FormId } from '../../drafting/verbs.ts';
import type { Target } from '../../grader/exercise.ts';
import type { Message } from '../../words/message.ts';
import type { About } from './about.ts';

/** What a blank may be filled with: a name, an expression or a word; a place; a heading; a list of points, of a seam's parts, or of passings. */
export type Filling =
  | string
  | readonly [number, number]
  | Heading
  | readonly (Name | Part)[]
  | readonly (Passing | null)[];

/** A tool: one way of saying a step, or the tape laid on without making one. */
export type ToolId = FormId | 'measure';

/** The tool in hand: its sentence, as far as it is filled. */
export interface Hand {
  readonly tool: ToolId;
  readonly filled: Readonly<Record<string, Filling>>;
  /** The blank that pointing fills; null when none is left. */
  readonly at: string | null;
  /** The target that what is made will answer. */
  readonly answers: Name | null;
}

/** The steps, and where one stands in them. */
export interface Draft {
  readonly steps: readonly Step[];
  /** How many steps are carried out: fewer than all while one stands back in the working. */
  readonly upTo: number;
}

/** A draft that undo or redo goes to, with as much about it as was changed together with its steps. */
export interface Turn extends Draft {
  readonly about: Partial<About>;
}

/** The draft on the table and what one is doing to it. */
export interface Bench extends Draft {
  readonly about: About;
  readonly hand: Hand | null;
  readonly past: readonly Turn[];
  readonly future: readonly Turn[];
  /** What is being dragged or nudged: its moves are one move to undo. */
  readonly dragging: Name | null;
  /** What to say of the last change; `turn` counts, so that the same words can be said twice. */
  readonly said: Message | null;
  readonly turn: number;
}

/** What the draft is made on and for. */
export interface Room {
  readonly givens: Givens;
  /** What lies there for the marker: also what the learner is to work out. */
  readonly marker: Givens;
  readonly targets: readonly Target[];
}

/** A bench with nothing drawn on it yet. */
export function emptyBench(about: About): Bench {
  return { steps: [], upTo: 0, about, hand: null, past: [], future: [], dragging: null, said: null, turn: 0 };
}
