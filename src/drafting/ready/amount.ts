import type { Sign, Tree } from '../expression/tree.ts';
import { parse } from '../expression.ts';
import type { Input } from '../input.ts';
import { AMOUNT_REACH } from '../limits.ts';
import type { Quantity } from '../quantity.ts';
import type { Name } from '../step.ts';
import type { Taker } from './takes.ts';

type Dimension = Quantity['dimension'];

/**
 * An expression with its names numbered. Its value is NaN where it comes to none, and its dimension null: what `compute` finds, which says
 * why besides, without an object for every sign.
 */
interface Amount {
  readonly value: (inputs: readonly Input[]) => number;
  readonly dimension: (inputs: readonly Input[]) => Dimension | null;
}

/** Takes an expression of the dimension wanted; null where it cannot be understood. */
export function amountTaker(text: string, wanted: Dimension, uses: readonly Name[]): Taker | null {
  const parsed = parse(text);
  if (!parsed.ok) return null;
  const { value, dimension } = amountOf(parsed.tree, uses);
  return (inputs) => {
    if (dimension(inputs) !== wanted) return undefined;
    const found = value(inputs);
    return Number.isNaN(found) ? undefined : found;
  };
}

function amountOf(tree: Tree, uses: readonly Name[]): Amount {
  switch (tree.kind) {
    case 'literal': {
      const { value, dimension } = tree.quantity;
      const known = withinReach(value);
      return { value: () => known, dimension: () => dimension };
    }
    case 'name': {
      const at = uses.indexOf(tree.name);
      return { value: (inputs) => withinReach(worthOf(inputs[at])), dimension: (inputs) => dimensionOf(inputs[at]) };
    }
    case 'minus': {
      const { value, dimension } = amountOf(tree.of, uses);
      return { value: (inputs) => -value(inputs), dimension };
    }
    case 'pair': {
      const [left, right] = [amountOf(tree.left, uses), amountOf(tree.right, uses)];
      const [work, like] = [worked[tree.sign], dimensions[tree.sign]];
      return {
        value: (inputs) => withinReach(work(left.value(inputs), right.value(inputs))),
        dimension: (inputs) => like(left.dimension(inputs), right.dimension(inputs)),
      };
    }
  }
}

function withinReach(value: number): number {
  return Math.abs(value) <= AMOUNT_REACH ? value : Number.NaN;
}

function worthOf(input: Input | undefined): number {
  if (input === undefined) return Number.NaN;
  if ('dimension' in input) return input.value;
  return input.kind === 'length' ? input.length : input.kind === 'angle' ? input.angle : Number.NaN;
}

function dimensionOf(input: Input | undefined): Dimension | null {
  if (input === undefined) return null;
  if ('dimension' in input) return input.dimension;
  return input.kind === 'length' || input.kind === 'angle' ? input.kind : null;
}

const worked: Readonly<Record<Sign, (a: number, b: number) => number>> = {
  '+': (a, b) => a + b,
  '-': (a, b) => a - b,
  '*': (a, b) => a * b,
  // Is there nothing to divide by?
  '/': (a, b) => (b === 0 ? Number.NaN : a / b),
};

type Both = (a: Dimension | null, b: Dimension | null) => Dimension | null;

const alike: Both = (a, b) => (a === b ? a : null);

const dimensions: Readonly<Record<Sign, Both>> = {
  '+': alike,
  '-': alike,
  '*': (a, b) => {
    if (a === null || b === null) return null;
    if (a === 'number' || b === 'number') return b === 'number' ? a : b;
    return a === b ? null : 'length';
  },
  '/': (a, b) => {
    if (a === null || b === null) return null;
    if (b === 'number') return a;
    if (a === b) return 'number';
    return a === 'length' ? a : null;
  },
};
