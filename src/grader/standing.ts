import { sameShape } from '../drafting/same-shape.ts';
import type { Shape } from '../drafting/shape.ts';
import type { Givens, Pins } from '../drafting/sheet.ts';
import type { Name } from '../drafting/step.ts';
import type { Exercise } from './exercise.ts';
import { type Named, shapeNamed } from './measures/lookup.ts';
import { referenceGround, referenceHolding } from './plan/reference-ground.ts';

export { referenceOn } from './reference-on.ts';

/** What a target is judged by. */
export interface Footing {
  /** The right shape, given the learner's earlier targets; null when even the reference cannot make it. */
  readonly right: Shape | null;
  /** The reference's sheet with the learner's earlier targets pinned. */
  readonly reference: Named;
}

/** From where a target is judged. */
export interface Standing extends Footing {
  /** The earlier targets that were pinned. */
  readonly pins: Pins;
}

/** The ground on which a learner's targets are judged, one after another. */
export interface Ground {
  readonly footingFor: (target: Name) => Footing;
  readonly standingFor: (target: Name) => Standing;
  /** Holds the learner's answer in place of the reference's own. */
  readonly pin: (target: Name, answer: Shape) => void;
}

/**
 * The ground under a draft. The reference is drawn with a pin only where the learner's answer differs from what the
 * reference makes there: the same shape leaves everything as it is. Where the learner's answers leave the reference
 * nothing to stand on, a target is judged from the reference's own ground.
 */
export function groundUnder(exercise: Exercise, givens: Givens): Ground {
  return groundOn(referenceGround(exercise, givens), (pins) => referenceHolding(exercise, givens, pins));
}

/** The same from the reference as it is of itself, and as it is with answers held. */
export function groundOn(own: Named, holding: (pins: Pins) => Named): Ground {
  const pins = new Map<Name, Shape>();
  let reference = own;
  let moved = false;
  const footingFor = (target: Name): Footing => {
    if (moved) reference = holding(pins);
    moved = false;
    const right = shapeNamed(reference, target);
    return right === null ? { right: shapeNamed(own, target), reference: own } : { right, reference };
  };
  const standingFor = (target: Name): Standing => {
    const footing = footingFor(target);
    return { ...footing, pins: shapeNamed(reference, target) === null ? new Map() : new Map(pins) };
  };
  const pin = (target: Name, answer: Shape): void => {
    const made = reference.shapes.get(reference.answers.get(target) ?? '');
    moved ||= made === undefined || !sameShape(made, answer);
    pins.set(target, answer);
  };
  return { footingFor, standingFor, pin };
}
