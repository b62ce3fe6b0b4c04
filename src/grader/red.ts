import { isDrawn, type Shape } from '../drafting/shape.ts';
import { isAllAlong } from './all-along.ts';
import type { JudgedCheck, JudgedTarget } from './judge.ts';
import type { RedMark } from './result.ts';

const NOTHING: RedMark = { arrow: null, band: null };

/** What the red pencil draws for a check: the band that was allowed, and, where the answer is not within it, an arrow to where it should be. */
export function redMarkFor({ right }: JudgedTarget, one: JudgedCheck): RedMark {
  if (one.reading === null) return NOTHING;
  const arrow = one.status === 'within' ? null : one.reading.arrow;
  return { arrow, band: right === null ? null : bandAbout(right, one) };
}

/** Chalk is laid along a curve where a check holds all along it. How far it may stray to taste is allowed it besides. */
function bandAbout(right: Shape, { check, reading, bounds, tolerance }: JudgedCheck): RedMark['band'] {
  if (!isDrawn(right) || reading?.unit !== 'mm') return null;
  if (right.kind === 'curve' && !isAllAlong(check)) return null;
  const taste = check.measure === 'shape' ? (bounds.most ?? 0) : 0;
  return { about: right, half: taste + tolerance };
}
