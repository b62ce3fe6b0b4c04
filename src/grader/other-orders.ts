import { evaluate } from '../drafting/expression.ts';
import { sampleFigure } from '../garment/sample.ts';
import { readStyle } from '../garment/style.ts';
import { variedStyle } from '../garment/style-varied.ts';
import type { Exercise } from './exercise.ts';
import type { Order } from './order.ts';
import { ownMeasures } from './own-measures.ts';

/** How many other people's jackets a draft is tried on. */
const OTHERS = 6;

/** For so many styles and house rules the other orders of an exercise are kept: a class has one of each, or a few. */
const KEPT = 8;

const kept = new WeakMap<Exercise, Map<string, readonly Order[]>>();

/**
 * Other orders for an exercise: other figures, and the style varied within the exercise's ranges, since a typed number
 * would pass for a name as long as the style stood still. Always the same ones, so that a mark can be checked again: the
 * very same objects while they are kept, for they hang on the style and the house rules alone, and not on the figure.
 */
export function otherOrders(exercise: Exercise, order: Order, count = OTHERS): readonly Order[] {
  const here = kept.get(exercise) ?? new Map<string, readonly Order[]>();
  kept.set(exercise, here);
  const key = `${count} ${textOf(order.style)} ${textOf(order.house)}`;
  const orders = here.get(key) ?? drawOthers(exercise, order, count);
  // Those used last are at the end, and the first one goes.
  here.delete(key);
  here.set(key, orders);
  for (const oldest of here.keys()) if (here.size > KEPT) here.delete(oldest);
  return orders;
}

const texts = new WeakMap<Order['style'], string>();

/** What they say as text, written once: where an order leaves out what the exercise states, its words are the exercise's own. */
function textOf(words: Order['style'] | Order['house']): string {
  const known = texts.get(words) ?? JSON.stringify(words);
  texts.set(words, known);
  return known;
}

function drawOthers(exercise: Exercise, order: Order, count: number): readonly Order[] {
  const group = 'sampled' in exercise.figure ? exercise.figure.sampled : 'anyone';
  const base = readStyle(order.style, ownMeasures(exercise));
  if (!base.ok) return [];
  const ranges = Object.fromEntries(
    Object.entries(exercise.style).flatMap(([name, { from, to }]) => {
      const least = evaluate(from, new Map());
      const most = evaluate(to, new Map());
      return least.ok && most.ok ? [[name, { least: least.quantity.value, most: most.quantity.value }]] : [];
    }),
  );
  return Array.from({ length: count }, (_, index) => {
    const seed = `${exercise.id}/other/${index}`;
    const style = variedStyle(exercise.id, index, base.style, ranges);
    return {
      figure: sampleFigure(seed, group),
      style: Object.fromEntries([...style].map(([name, { value }]) => [name, `${value} mm`])),
      house: order.house,
    };
  });
}
