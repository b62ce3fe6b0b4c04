import { isDrawn } from '../drafting/shape.ts';
import type { JudgedCheck, JudgedTarget } from './judge.ts';
import type { RedMark } from './result.ts';

const NOTHING: RedMark = { arrow: null, band: null };

/** What the red pencil draws for a check: the band that was allowed, and, where the answer is not within it, an arrow to where it should be. */
export function redMarkFor(judged: JudgedTarget, { status, reading, tolerance }: JudgedCheck): RedMark {
  if (reading === null) return NOTHING;
  const { right } = judged;
  const drawn = right === null || !isDrawn(right) || reading.unit !== 'mm' ? null : right;
  const arrow = status === 'within' ? null : reading.arrow;
  return { arrow, band: drawn === null ? null : { about: drawn, half: tolerance } };
}
