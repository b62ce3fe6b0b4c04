import { isRecord } from '../drafting/record.ts';
import { readFigure } from '../garment/figure.ts';
import { houseRules } from '../garment/house-rules.ts';
import { people } from '../garment/people.ts';
import { readStyle } from '../garment/style.ts';
import type { Fault } from '../grader/reading/fault.ts';
import { unknownName } from '../grader/reading/unknown.ts';
import type { FigureRecipe, OrderRecipe } from './hand-in.ts';

export interface RecipeReading {
  /** Null where the form of it is not that of an order; the form's own faults say so. */
  readonly recipe: OrderRecipe | null;
  readonly faults: readonly Fault[];
}

/** Looks up what the order of a hand-in names: a person, measures of a body, style measures, house rules. */
export function readRecipe(handIn: unknown): RecipeReading {
  const order = isRecord(handIn) ? handIn['order'] : null;
  if (!isRecord(order) || !isRecord(order['figure']) || !isRecord(order['style']) || !isRecord(order['house'])) {
    return { recipe: null, faults: [] };
  }
  const figure = figureFrom(order['figure']);
  const style = readStyle(order['style']);
  return {
    recipe: {
      figure: figure.recipe,
      style: order['style'] as OrderRecipe['style'],
      house: order['house'] as OrderRecipe['house'],
    },
    faults: [
      ...figure.faults,
      ...(style.ok ? [] : style.errors.map(({ path, message }) => ({ at: ['order', 'style', path], message }))),
      ...Object.entries(order['house']).flatMap(([rule, choice]) => houseFaults(rule, choice)),
    ],
  };
}

/** The recipe of a figure with its measures read; a form that fits none of the three is the form's own fault. */
function figureFrom(figure: Readonly<Record<string, unknown>>) {
  const recipe = figure as unknown as FigureRecipe;
  if ('named' in recipe && typeof recipe.named === 'string') {
    const known = people.map(({ id }) => id);
    const at = ['order', 'figure', 'named'];
    const faults = known.includes(recipe.named)
      ? []
      : [{ at, message: unknownName('what.person', recipe.named, known) }];
    return { recipe, faults };
  }
  if (!('measures' in recipe)) return { recipe, faults: [] };
  const read = readFigure(recipe.measures);
  if (read.ok) return { recipe: { measures: read.figure }, faults: [] };
  const at = ['order', 'figure', 'measures'];
  const faults = read.errors.map(({ path, message }) => ({ at: path === '' ? at : [...at, path], message }));
  return { recipe, faults };
}

function houseFaults(name: string, choice: unknown): readonly Fault[] {
  const at = ['order', 'house', name];
  const rule = houseRules.find((one) => one.name === name);
  if (rule === undefined) {
    return [
      {
        at,
        message: unknownName(
          'what.house-rule',
          name,
          houseRules.map((one) => one.name),
        ),
      },
    ];
  }
  const known = rule.choices.map((one) => one.name);
  if (typeof choice !== 'string' || known.includes(choice)) return [];
  return [{ at, message: unknownName('what.house-choice', choice, known) }];
}
