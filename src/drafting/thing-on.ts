import { type Input, type Inputs, inputNamed } from './input.ts';
import type { MadeThing, Thing } from './plan.ts';
import { type Memory, madeBefore } from './remember.ts';

/** A table with what is known to lie there by now: by a thing's place, null where it cannot be made there. */
export interface Laying {
  readonly table: Inputs;
  readonly known: (Input | null | undefined)[];
  /** What drafts made there already; null where it is not worth looking. */
  readonly memory: Memory | null;
}

/** What a thing is on a table, made when it is first asked for, and all it is made from; null where it cannot be made there. */
export function thingOn(thing: Thing, laying: Laying): Input | null {
  const known = laying.known[thing.at];
  if (known !== undefined) return known;
  const found = thing.given === null ? madeOn(thing, laying) : (inputNamed(thing.given, laying.table) ?? null);
  laying.known[thing.at] = found;
  return found;
}

function madeOn({ making, from }: MadeThing, laying: Laying): Input | null {
  const inputs = from.map((one) => thingOn(one, laying));
  if (!areThere(inputs)) return null;
  const before = laying.memory && madeBefore(laying.memory, making.pattern, inputs);
  return before ?? making.make(inputs);
}

function areThere(inputs: readonly (Input | null)[]): inputs is readonly Input[] {
  return !inputs.includes(null);
}
