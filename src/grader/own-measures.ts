import type { Name } from '../drafting/step.ts';
import type { Exercise } from './exercise.ts';

/** The style measures that an exercise brings along itself, beside those of the course: those it says what they are. */
export function ownMeasures({ style }: Pick<Exercise, 'style'>): readonly Name[] {
  return Object.entries(style).flatMap(([name, { about }]) => (about === undefined ? [] : [name]));
}
