import type { Givens } from '../drafting/sheet.ts';
import type { Name } from '../drafting/step.ts';
import { houseMeasures } from '../garment/house.ts';
import { type GivensMade, givensOf } from '../garment/measures.ts';
import { readStyle } from '../garment/style.ts';
import type { Message } from '../words/message.ts';
import type { Order } from './order.ts';

export type Dealt = { readonly ok: true; readonly givens: Givens } | { readonly ok: false; readonly message: Message };

/**
 * Lays an order on the table: the block of its figure, and every measure with what its house rules add. `own` are the measures
 * that an exercise brings along. Fails with a sentence where a measure does not fit.
 */
export function dealOrder(order: Order, own: readonly Name[] = []): Dealt {
  const made = givensOnce(order, own);
  if (!made.ok) return made;
  const ruled = houseMeasures(order.house, made.givens.measures);
  if (!ruled.ok) return ruled;
  return { ok: true, givens: { shapes: made.givens.shapes, measures: ruled.measures } };
}

const dealt = new WeakMap<Order['figure'], WeakMap<Order['style'], GivensMade>>();

/** The block and the measures, made once for a figure and a style: orders that differ in a house rule share them. */
function givensOnce({ figure, style }: Order, own: readonly Name[]): GivensMade {
  const here = dealt.get(figure) ?? new WeakMap<Order['style'], GivensMade>();
  dealt.set(figure, here);
  const made = here.get(style) ?? givensAfresh(figure, style, own);
  here.set(style, made);
  return made;
}

function givensAfresh(figure: Order['figure'], written: Order['style'], own: readonly Name[]): GivensMade {
  const read = readStyle(written, own);
  if (!read.ok) return { ok: false, message: read.errors[0]?.message ?? { text: '', values: {} } };
  return givensOf(figure, read.style);
}
