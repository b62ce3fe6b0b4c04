import { isRecord } from '../drafting/record.ts';
import { readFigure } from '../garment/figure.ts';
import { readStyle, type StyleError } from '../garment/style.ts';
import { styleMeasureNamed, styleMeasures } from '../garment/style-measures.ts';
import type { Fault } from '../grader/reading/fault.ts';
import { message } from '../words/message.ts';
import type { FigureRecipe, OrderRecipe } from './hand-in.ts';
import { houseFaults } from './house-faults.ts';
import { personFaults } from './person-faults.ts';

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
      ...(style.ok ? [] : style.errors.map(styleFault)),
      ...houseFaults(order['house'], ['order', 'house']),
    ],
  };
}

/** A measure that the course does not know may be an exercise's own: which stands in the exercise, and in no hand-in. */
function styleFault({ path, message: why }: StyleError): Fault {
  const known = styleMeasures.map(({ name }) => name);
  const isStrange = path !== '' && styleMeasureNamed(path) === null;
  return {
    at: ['order', 'style', path],
    message: isStrange ? message('files.style-strange', { name: path, known: { listed: known } }) : why,
  };
}

/** The recipe of a figure with its measures read; a form that fits none of the three is the form's own fault. */
function figureFrom(figure: Readonly<Record<string, unknown>>) {
  const recipe = figure as unknown as FigureRecipe;
  if ('named' in recipe && typeof recipe.named === 'string') {
    return { recipe, faults: personFaults(recipe.named, ['order', 'figure', 'named']) };
  }
  if (!('measures' in recipe)) return { recipe, faults: [] };
  const read = readFigure(recipe.measures);
  if (read.ok) return { recipe: { measures: read.figure }, faults: [] };
  const at = ['order', 'figure', 'measures'];
  const faults = read.errors.map(({ path, message }) => ({ at: path === '' ? at : [...at, path], message }));
  return { recipe, faults };
}
