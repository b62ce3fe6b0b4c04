import type { Message } from '../words/message.ts';
import type { Quantity } from './quantity.ts';
import type { Shape } from './shape.ts';
import type { Name } from './step.ts';

/** Everything that has a name when a step is carried out. */
export interface Scope {
  readonly shapes: ReadonlyMap<Name, Shape>;
  readonly measures: ReadonlyMap<Name, Quantity>;
  /** Why a name is not there when a step of the draft makes it, or ought to have; null when none does. */
  readonly absent: (name: Name) => Message | null;
}
