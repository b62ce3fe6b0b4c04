import { parse, print } from '../expression.ts';
import type { Name } from '../step.ts';
import { namesOfTree, putInTree } from './tree.ts';

/** An expression with another put in wherever it has a name: brackets come where they are needed. One that has not the name is left as typed. */
export function putInExpression(text: string, name: Name, put: string): string {
  const parsed = parse(text);
  const other = parse(put);
  if (!parsed.ok || !other.ok || !namesOfTree(parsed.tree).includes(name)) return text;
  return print(putInTree(parsed.tree, name, other.tree));
}
