import { isDrawn } from '../drafting/shape.ts';
import type { JudgedCheck, JudgedTarget } from './judge.ts';
import type { RedMark } from './result.ts';

const NOTHING: RedMark = { arrow: null, band: null };

/** What the red pencil draws for a check: nothing where all is well, else the band that was allowed and an arrow to where it should be. */
export function redMarkFor(judged: JudgedTarget, { status, reading, tolerance }: JudgedCheck): RedMark {
  if (reading === null || status === 'within') return NOTHING;
  const { right } = judged;
  const drawn = right === null || !isDrawn(right) || reading.unit !== 'mm' ? null : right;
  return { arrow: reading.arrow, band: drawn === null ? null : { about: drawn, half: tolerance } };
}
