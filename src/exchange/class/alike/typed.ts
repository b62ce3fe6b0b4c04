import { parse, type Tree } from '../../../drafting/expression.ts';
import type { Quantity } from '../../../drafting/quantity.ts';
import type { Step } from '../../../drafting/step.ts';
import { stepFields } from '../../../grader/step-fields.ts';

/**
 * The lengths and angles that were typed as numbers in a step, in the order they stand there. Numbers without a unit are
 * a way of reckoning (half, twice) and no measurement: they are left out.
 */
export function typedIn(step: Step): readonly Quantity[] {
  return stepFields(step).flatMap(({ text }) => {
    const parsed = parse(text);
    return parsed.ok ? literalsOf(parsed.tree).filter(({ dimension }) => dimension !== 'number') : [];
  });
}

function literalsOf(tree: Tree): readonly Quantity[] {
  switch (tree.kind) {
    case 'literal':
      return [tree.quantity];
    case 'minus':
      return literalsOf(tree.of);
    case 'pair':
      return [...literalsOf(tree.left), ...literalsOf(tree.right)];
    case 'name':
      return [];
  }
}
