import type { Figure } from '../garment/figure.ts';
import { people } from '../garment/people.ts';
import { sampleFigure } from '../garment/sample.ts';
import type { Exercise } from './exercise.ts';
import type { Order } from './order.ts';

/** The order an exercise starts from: its figure, or one sampled by the seed, its style as stated, its house rules. */
export function orderFor(exercise: Exercise, seed: string | number): Order {
  return {
    figure: figureFor(exercise, seed),
    style: Object.fromEntries(Object.entries(exercise.style).map(([name, { value }]) => [name, value])),
    house: exercise.house,
  };
}

function figureFor(exercise: Exercise, seed: string | number): Figure {
  if ('sampled' in exercise.figure) return sampleFigure(seed, exercise.figure.sampled);
  const { named } = exercise.figure;
  return people.find(({ id }) => id === named)?.figure ?? sampleFigure(seed, 'anyone');
}
