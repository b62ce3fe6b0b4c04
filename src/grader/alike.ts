import type { Quantity } from '../drafting/quantity.ts';

/** How near two amounts must come to be taken for one another: half a millimetre and what inches lose in rounding; half a degree; nothing for a plain number. */
const ALIKE: Readonly<Record<Quantity['dimension'], number>> = { length: 0.6, angle: Math.PI / 360, number: 1e-9 };

/** Whether one may have been written for the other. */
export function isAlike(one: Quantity, other: Quantity): boolean {
  return one.dimension === other.dimension && Math.abs(one.value - other.value) <= ALIKE[one.dimension];
}
