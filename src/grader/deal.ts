import type { Givens } from '../drafting/sheet.ts';
import { houseMeasures } from '../garment/house.ts';
import { type GivensMade, givensOf } from '../garment/measures.ts';
import { readStyle } from '../garment/style.ts';
import type { Message } from '../words/message.ts';
import type { Order } from './order.ts';

export type Dealt = { readonly ok: true; readonly givens: Givens } | { readonly ok: false; readonly message: Message };

/** Lays an order on the table: the block of its figure, and every measure with what its house rules add. Fails with a sentence where a measure does not fit. */
export function dealOrder(order: Order): Dealt {
  const made = givensOnce(order);
  if (!made.ok) return made;
  const ruled = houseMeasures(order.house, made.givens.measures);
  if (!ruled.ok) return ruled;
  return { ok: true, givens: { shapes: made.givens.shapes, measures: ruled.measures } };
}

const dealt = new WeakMap<Order['figure'], WeakMap<Order['style'], GivensMade>>();

/** The block and the measures, made once for a figure and a style: orders that differ in a house rule share them. */
function givensOnce({ figure, style }: Order): GivensMade {
  const here = dealt.get(figure) ?? new WeakMap<Order['style'], GivensMade>();
  dealt.set(figure, here);
  const made = here.get(style) ?? givensAfresh(figure, style);
  here.set(style, made);
  return made;
}

function givensAfresh(figure: Order['figure'], written: Order['style']): GivensMade {
  const read = readStyle(written);
  if (!read.ok) return { ok: false, message: read.errors[0]?.message ?? { text: '', values: {} } };
  return givensOf(figure, read.style);
}
