import type { Literal, Tree } from './tree.ts';

/** How the parts of an expression are written. */
export interface Hand {
  readonly name: (name: string) => string;
  readonly literal: (literal: Literal) => string;
  readonly signs: Readonly<Record<'+' | '-' | '*' | '/', string>>;
}

/** As it would be typed. */
const typed: Hand = {
  name: (name) => name,
  literal: ({ text }) => text,
  signs: { '+': '+', '-': '-', '*': '*', '/': '/' },
};

const rank = (tree: Tree): number =>
  tree.kind === 'pair' ? (tree.sign === '+' || tree.sign === '-' ? 1 : 2) : tree.kind === 'minus' ? 3 : 4;

/**
 * The expression in writing, with no more brackets than it needs. As typed, it is the inverse of `parse`: what it
 * prints parses to the same tree.
 */
export function print(tree: Tree, hand: Hand = typed): string {
  const within = (inner: Tree, least: number): string =>
    rank(inner) < least ? `(${print(inner, hand)})` : print(inner, hand);
  switch (tree.kind) {
    case 'literal':
      return hand.literal(tree);
    case 'name':
      return hand.name(tree.name);
    case 'minus':
      return `${hand.signs['-']}${within(tree.of, 3)}`;
    case 'pair':
      return `${within(tree.left, rank(tree))} ${hand.signs[tree.sign]} ${within(tree.right, rank(tree) + 1)}`;
  }
}
