import { evaluate } from '../drafting/expression.ts';
import type { Exercise, FigureChoice } from '../grader/exercise.ts';
import type { FigureRecipe, HandIn } from './hand-in.ts';

/**
 * Whether a hand-in was drawn on the exercise's own order: its person, or any figure of the group that it samples, its
 * style and its house rules.
 */
export function isOwnOrder({ order }: HandIn, exercise: Exercise): boolean {
  return (
    isOwnFigure(order.figure, exercise.figure) &&
    Object.entries(order.style).every(([name, value]) => isSameLength(value, exercise.style[name]?.value)) &&
    Object.entries(order.house).every(([rule, choice]) => exercise.house[rule] === choice)
  );
}

function isOwnFigure(recipe: FigureRecipe, own: FigureChoice): boolean {
  if ('named' in own) return 'named' in recipe && recipe.named === own.named;
  return 'sampled' in recipe && recipe.sampled === own.sampled;
}

/** Whether two expressions are of the same length, however they are written. */
export function isSameLength(one: string, other: string | undefined): boolean {
  if (other === undefined) return false;
  const [found, wanted] = [evaluate(one, new Map()), evaluate(other, new Map())];
  if (!found.ok || !wanted.ok) return one === other;
  return Math.abs(found.quantity.value - wanted.quantity.value) < 1e-9;
}
