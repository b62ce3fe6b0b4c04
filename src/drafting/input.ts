import type { Quantity } from './quantity.ts';
import type { Shape } from './shape.ts';
import type { Name } from './step.ts';

/** What a step is made from: an object, or a measure that is none. */
export type Input = Shape | Quantity;

/** Where inputs are looked up by name. */
export interface Inputs {
  readonly shapes: ReadonlyMap<Name, Shape>;
  readonly measures: ReadonlyMap<Name, Quantity>;
}

/** The input of this name: the object, and where there is none the measure. */
export function inputNamed(name: Name, { shapes, measures }: Inputs): Input | undefined {
  return shapes.get(name) ?? measures.get(name);
}
