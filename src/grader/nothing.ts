/** A length counts as nothing below this, mm: less than the finest tolerance a teacher can choose. Of degrees, too, nobody draws half of one. */
const NOTHING = 0.5;

/** Whether a reading, in mm or degrees, is as good as nothing. */
export function isNothing(value: number): boolean {
  return Math.abs(value) < NOTHING;
}
