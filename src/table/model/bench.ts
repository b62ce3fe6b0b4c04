import type { Givens } from '../../drafting/sheet.ts';
import type { Heading, Name, Part, Passing, Step } from '../../drafting/step.ts';
import type { FormId } from '../../drafting/verbs.ts';
import type { Target } from '../../grader/exercise.ts';
import type { Message } from '../../words/message.ts';

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

/** Everything that undo goes back to. */
export interface Draft {
  readonly steps: readonly Step[];
  /** How many steps are carried out: fewer than all while one stands back in the working. */
  readonly upTo: number;
}

/** The draft on the table and what one is doing to it. */
export interface Bench extends Draft {
  readonly hand: Hand | null;
  readonly past: readonly Draft[];
  readonly future: readonly Draft[];
  /** What is being dragged or nudged: its moves are one move to undo. */
  readonly dragging: Name | null;
  /** What to say of the last change; `turn` counts, so that the same words can be said twice. */
  readonly said: Message | null;
  readonly turn: number;
}

/** What the draft is made on and for. */
export interface Room {
  readonly givens: Givens;
  readonly targets: readonly Target[];
}

export const emptyBench: Bench = {
  steps: [],
  upTo: 0,
  hand: null,
  past: [],
  future: [],
  dragging: null,
  said: null,
  turn: 0,
};

/** A bench with these steps on it, all carried out. */
export function benchWith(steps: readonly Step[]): Bench {
  return { ...emptyBench, steps, upTo: steps.length };
}
