import type { Givens } from '../drafting/sheet.ts';
import { houseMeasures } from '../garment/house.ts';
import { givensOf } from '../garment/measures.ts';
import { readStyle } from '../garment/style.ts';
import type { Message } from '../words/message.ts';
import type { Order } from './order.ts';

export type Dealt = { readonly ok: true; readonly givens: Givens } | { readonly ok: false; readonly message: Message };

/** Lays an order on the table: the block of its figure, and every measure with what its house rules add. Fails with a sentence where a measure does not fit. */
export function dealOrder(order: Order): Dealt {
  const style = readStyle(order.style);
  if (!style.ok) return { ok: false, message: style.errors[0]?.message ?? { text: '', values: {} } };
  const made = givensOf(order.figure, style.style);
  if (!made.ok) return made;
  const ruled = houseMeasures(order.house, made.givens.measures);
  if (!ruled.ok) return ruled;
  return { ok: true, givens: { shapes: made.givens.shapes, measures: ruled.measures } };
}
