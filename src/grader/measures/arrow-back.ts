import type { Bow } from '../../geometry/bow.ts';
import type { Reading } from './reading.ts';

/** The arrow from where a curve bows to where it would by so many mm less. */
export function arrowBack({ at, left }: Bow, by: number): Reading['arrow'] {
  return { from: at, to: { x: at.x - left.x * by, y: at.y - left.y * by } };
}
