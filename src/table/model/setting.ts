import type { FigureRecipe, OrderRecipe } from '../../exchange/hand-in.ts';
import type { Exercise } from '../../grader/exercise.ts';
import type { Strictness } from '../../grader/tolerance.ts';

/** The order on the table, and how hard it is marked. */
export interface Setting extends OrderRecipe {
  readonly strictness: Strictness;
}

/** How an exercise starts: on its own figure, by its own style and house rules. `seed` decides the figure where it samples one. */
export function startSetting(exercise: Exercise, seed: string): Setting {
  return { figure: figureOf(exercise, seed), style: {}, house: exercise.house, strictness: 'workroom' };
}

function figureOf({ figure }: Exercise, seed: string): FigureRecipe {
  return 'named' in figure ? figure : { sampled: figure.sampled, seed };
}

/** The setting of a draft that was kept or handed in. */
export function settingOf(order: OrderRecipe, strictness: Strictness, exercise: Exercise): Setting {
  return { ...order, house: { ...exercise.house, ...order.house }, strictness };
}

/** A figure nobody has met yet, of the group the exercise asks for. */
export function newFigure({ figure }: Exercise, seed: string): FigureRecipe {
  return { sampled: 'sampled' in figure ? figure.sampled : 'anyone', seed };
}
