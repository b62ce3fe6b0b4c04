import type { Quantity } from '../quantity.ts';

/** A number as typed, with its unit. `text` is the tidied wording: `1 1/4 in`, `22.5 deg`, `3.2 cm`. */
export interface Literal {
  readonly kind: 'literal';
  readonly text: string;
  readonly quantity: Quantity;
}

/** A measure named. */
export interface Named {
  readonly kind: 'name';
  readonly name: string;
}

export interface Minus {
  readonly kind: 'minus';
  readonly of: Tree;
}

export type Sign = '+' | '-' | '*' | '/';

export interface Pair {
  readonly kind: 'pair';
  readonly sign: Sign;
  readonly left: Tree;
  readonly right: Tree;
}

/** An expression understood. */
export type Tree = Literal | Named | Minus | Pair;

/** Every name in the tree, each once, in the order met. */
export function namesOfTree(tree: Tree): readonly string[] {
  const found = new Set<string>();
  const walk = (node: Tree): void => {
    if (node.kind === 'name') found.add(node.name);
    else if (node.kind === 'minus') walk(node.of);
    else if (node.kind === 'pair') {
      walk(node.left);
      walk(node.right);
    }
  };
  walk(tree);
  return [...found];
}

/** The tree with one name put for another. */
export function renameInTree(tree: Tree, from: string, to: string): Tree {
  if (tree.kind === 'name') return tree.name === from ? { kind: 'name', name: to } : tree;
  if (tree.kind === 'minus') return { kind: 'minus', of: renameInTree(tree.of, from, to) };
  if (tree.kind === 'pair') {
    return { ...tree, left: renameInTree(tree.left, from, to), right: renameInTree(tree.right, from, to) };
  }
  return tree;
}
