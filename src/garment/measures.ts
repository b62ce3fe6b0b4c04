import { millimetres, type Quantity, radians } from '../drafting/quantity.ts';
import type { Givens } from '../drafting/sheet.ts';
import type { Name } from '../drafting/step.ts';
import type { Message } from '../words/message.ts';
import { blockOf } from './block.ts';
import { type Figure, figureMeasures, measureRanges } from './figure.ts';

/** Every measure an expression may name: the figure's and the style's. A style measure never hides one of the figure's. */
export function measuresOf(figure: Figure, style: ReadonlyMap<Name, Quantity>): ReadonlyMap<Name, Quantity> {
  const body = figureMeasures.map((name): [Name, Quantity] => [
    name,
    measureRanges[name].unit === 'degrees' ? radians((figure[name] * Math.PI) / 180) : millimetres(figure[name]),
  ]);
  return new Map([...style, ...body]);
}

export type GivensMade =
  | { readonly ok: true; readonly givens: Givens }
  | { readonly ok: false; readonly message: Message };

/** What lies on the table for a figure in a style: its block and its measures. Fails where no block can be drawn. */
export function givensOf(figure: Figure, style: ReadonlyMap<Name, Quantity>): GivensMade {
  const block = blockOf(figure);
  if (!block.ok) return block;
  return { ok: true, givens: { shapes: block.shapes, measures: measuresOf(figure, style) } };
}
