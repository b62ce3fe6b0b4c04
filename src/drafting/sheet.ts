import type { Message } from '../words/message.ts';
import type { Quantity } from './quantity.ts';
import type { Shape } from './shape.ts';
import type { Name } from './step.ts';

/** What lies on the table before the first step: the block's objects, and every measure that expressions may name. */
export interface Givens {
  readonly shapes: ReadonlyMap<Name, Shape>;
  readonly measures: ReadonlyMap<Name, Quantity>;
}

/** Why a step could not be carried out. */
export interface Problem {
  /** Position of the step in the draft, from 0. */
  readonly step: number;
  readonly name: Name;
  /** The field at fault, when one is. */
  readonly field: string | null;
  readonly message: Message;
}

/** What a draft comes to: everything that has a name, given or made. */
export interface Sheet {
  readonly shapes: ReadonlyMap<Name, Shape>;
  /** Given measures, the lengths taped and the angles read. */
  readonly measures: ReadonlyMap<Name, Quantity>;
  /** Target to the name of the object that answers it; where two steps claim a target the later one counts. */
  readonly answers: ReadonlyMap<Name, Name>;
  readonly problems: readonly Problem[];
}

/** A sheet with what it cost to draw. */
export interface Replayed extends Sheet {
  /** Work done, in the units of `geometry/work.ts`; DRAFT_WORK or more when some step was given up for it. */
  readonly work: number;
}

/** Targets held in place of what their steps would make. */
export type Pins = ReadonlyMap<Name, Shape>;
