import { type Message, message } from '../../words/message.ts';
import { AMOUNT_REACH } from '../limits.ts';
import { bare, type Quantity } from '../quantity.ts';
import { print } from './print.ts';
import type { Pair, Tree } from './tree.ts';

export type Computed =
  | { readonly ok: true; readonly quantity: Quantity }
  | { readonly ok: false; readonly message: Message };

/** What to say when a name is not among the measures. */
export type Unknown = (name: string) => Message;

/** The value of an expression understood: a length in mm, an angle in radians or a bare number; never beyond AMOUNT_REACH. */
export function compute(tree: Tree, measures: ReadonlyMap<string, Quantity>, unknown: Unknown): Computed {
  const found = worth(tree, measures, unknown);
  // Is it beyond all measure? Written so that NaN is.
  if (found.ok && !(Math.abs(found.quantity.value) <= AMOUNT_REACH))
    return { ok: false, message: message('expression.too-large') };
  return found;
}

function worth(tree: Tree, measures: ReadonlyMap<string, Quantity>, unknown: Unknown): Computed {
  if (tree.kind === 'literal') return { ok: true, quantity: tree.quantity };
  if (tree.kind === 'name') {
    const quantity = measures.get(tree.name);
    return quantity ? { ok: true, quantity } : { ok: false, message: unknown(tree.name) };
  }
  if (tree.kind === 'minus') {
    const of = compute(tree.of, measures, unknown);
    return of.ok ? { ok: true, quantity: { ...of.quantity, value: -of.quantity.value } } : of;
  }
  const left = compute(tree.left, measures, unknown);
  if (!left.ok) return left;
  const right = compute(tree.right, measures, unknown);
  if (!right.ok) return right;
  return worked[tree.sign](left.quantity, right.quantity, tree);
}

const worked: Readonly<Record<Pair['sign'], (a: Quantity, b: Quantity, tree: Pair) => Computed>> = {
  '+': (a, b, tree) => (a.dimension === b.dimension ? same(a, a.value + b.value) : unlike(a, b, tree)),
  '-': (a, b, tree) => (a.dimension === b.dimension ? same(a, a.value - b.value) : unlike(a, b, tree)),
  '*': times,
  '/': over,
};

const same = (like: Quantity, value: number): Computed => ({
  ok: true,
  quantity: { dimension: like.dimension, value },
});

function times(a: Quantity, b: Quantity): Computed {
  if (b.dimension === 'number') return same(a, a.value * b.value);
  if (a.dimension === 'number') return same(b, a.value * b.value);
  // A length times an angle is the arc that the angle cuts at that radius.
  if (a.dimension !== b.dimension) return { ok: true, quantity: { dimension: 'length', value: a.value * b.value } };
  return { ok: false, message: message('expression.product', { dimension: a.dimension }) };
}

function over(a: Quantity, b: Quantity, tree: Pair): Computed {
  // Is there nothing to divide by?
  if (b.value === 0) return { ok: false, message: message('expression.zero', { text: print(tree) }) };
  if (b.dimension === 'number') return same(a, a.value / b.value);
  if (a.dimension === b.dimension) return { ok: true, quantity: bare(a.value / b.value) };
  // An arc over its angle is the radius; an arc (a length) over a radius is covered by length over length.
  if (a.dimension === 'length') return same(a, a.value / b.value);
  return { ok: false, message: message('expression.quotient', { text: print(tree), dimension: b.dimension }) };
}

function unlike(a: Quantity, b: Quantity, tree: Pair): Computed {
  const number = a.dimension === 'number' ? tree.left : b.dimension === 'number' ? tree.right : null;
  if (!number) return { ok: false, message: message('expression.unlike', { text: print(tree) }) };
  const wanted = a.dimension === 'number' ? b.dimension : a.dimension;
  return { ok: false, message: message('expression.no-unit', { text: print(number), dimension: wanted }) };
}
