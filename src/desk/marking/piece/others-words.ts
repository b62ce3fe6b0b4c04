import type { Grade } from '../../../grader/result.ts';
import type { Say } from '../../../table/say.ts';

/**
 * What a draft does on other figures, and which step lets go: whether it was measured from the block, or only hits it on this one.
 * Null where it was tried on none.
 */
export function othersWords({ otherFigures }: Pick<Grade, 'otherFigures'>, say: Say): string | null {
  const { tried, held, letGo } = otherFigures;
  if (tried === 0) return null;
  if (held === tried) return say('table.others-held-all', { tried });
  return [say('table.others-held', { held, tried }), ...letGo.map(({ message: why }) => say.message(why))].join(' ');
}
