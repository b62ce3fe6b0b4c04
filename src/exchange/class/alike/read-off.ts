import type { Quantity } from '../../../drafting/quantity.ts';
import type { Sheet } from '../../../drafting/sheet.ts';
import type { Exercise } from '../../../grader/exercise.ts';
import { typedIn } from './typed.ts';

/** A number this near to one that stands on the order was read off it, mm: as near as sixteenths of an inch and tenths of a centimetre are shown. */
const SHOWN = 1;
/** Likewise of angles, radians: half a degree. */
const SHOWN_ANGLE = Math.PI / 360;
/** Angles that anyone takes are multiples of this, radians: 15 degrees. */
const ROUND_ANGLE = Math.PI / 12;
const CENTIMETRE = 10;
const INCH = 25.4;

/**
 * Whether a typed number has a reason on the draft's own order: it is one of its measures, of what the draft taped or of what
 * the exercise itself states; its half or its double; the same figure in the other unit; or as round as anyone takes.
 */
export function isReadOff({ dimension, value }: Quantity, known: readonly Quantity[]): boolean {
  if (dimension === 'angle') return isRound(value, ROUND_ANGLE, 1e-6) || known.some((one) => isAngle(one, value));
  if (isRound(value, CENTIMETRE, 1e-6) || isRound(value, INCH, 1e-6)) return true;
  return known.some((one) => one.dimension === 'length' && waysToRead(one.value).some((way) => isNear(way, value)));
}

/** The numbers that stand on an order: every measure, what the reference and the draft taped on it, and what the exercise states. */
export function knownOn(
  { reference, given = [] }: Exercise,
  sheets: readonly Pick<Sheet, 'measures'>[],
): readonly Quantity[] {
  return [...sheets.flatMap(({ measures }) => [...measures.values()]), ...[...reference, ...given].flatMap(typedIn)];
}

function waysToRead(length: number): readonly number[] {
  return [length, length / 2, length * 2, length * 2.54, length / 2.54];
}

function isNear(one: number, other: number): boolean {
  return Math.abs(one - other) <= SHOWN;
}

function isAngle({ dimension, value }: Quantity, angle: number): boolean {
  return dimension === 'angle' && Math.abs(value - angle) <= SHOWN_ANGLE;
}

/** Whether a number is a whole multiple of a step; nothing at all is. */
export function isRound(value: number, step: number, within: number): boolean {
  return Math.abs(value - Math.round(value / step) * step) <= within;
}
