import type { FigureRecipe, OrderRecipe } from '../../exchange/hand-in.ts';
import type { Exercise } from '../../grader/exercise.ts';
import type { Strictness } from '../../grader/tolerance.ts';

/** What may be chosen about an order, and how hard it is marked. */
export interface Setting {
  readonly figure: FigureRecipe;
  readonly house: Readonly<Record<string, string>>;
  readonly strictness: Strictness;
}

/** How an exercise starts: on its own figure, by its own house rules. `seed` decides the figure where it samples one. */
export function startSetting(exercise: Exercise, seed: string): Setting {
  return { figure: figureOf(exercise, seed), house: exercise.house, strictness: 'workroom' };
}

function figureOf({ figure }: Exercise, seed: string): FigureRecipe {
  return 'named' in figure ? figure : { sampled: figure.sampled, seed };
}

/** The recipe of the order on the table: the exercise's style, this figure, these house rules. */
export function recipeOf({ figure, house }: Setting): OrderRecipe {
  return { figure, style: {}, house };
}

/** A figure nobody has met yet, of the group the exercise asks for. */
export function newFigure({ figure }: Exercise, seed: string): FigureRecipe {
  return { sampled: 'sampled' in figure ? figure.sampled : 'anyone', seed };
}
