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

/** The tree with another put in wherever it has a name. */
export function putInTree(tree: Tree, name: string, put: Tree): Tree {
  if (tree.kind === 'name') return tree.name === name ? put : tree;
  if (tree.kind === 'minus') return { kind: 'minus', of: putInTree(tree.of, name, put) };
  if (tree.kind === 'pair') {
    return { ...tree, left: putInTree(tree.left, name, put), right: putInTree(tree.right, name, put) };
  }
  return tree;
}
