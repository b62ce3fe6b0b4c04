import type { RedMark } from '../../grader/result.ts';
import type { Box } from './box.ts';
import type { Part } from './drawing.ts';
import { shapeParts } from './parts.ts';

/** Where the red pencil points closer than this, mm, an arrow would only be a blot. */
const LEAST_ARROW = 0.8;

/** What the marker draws: bands first, under everything red, then the arrows. */
export function redParts(marks: readonly RedMark[], box: Box): Part[] {
  return [...marks.flatMap((mark) => bandParts(mark, box)), ...marks.flatMap(arrowParts)];
}

function bandParts({ band }: RedMark, box: Box): Part[] {
  if (!band) return [];
  return shapeParts(band.about, 'right', box).flatMap((part): Part[] => {
    if (part.kind === 'mark')
      return [{ kind: 'band', name: null, tone: 'right', path: [part.at, part.at], half: band.half }];
    if (part.kind === 'line')
      return [{ kind: 'band', name: null, tone: 'right', path: [part.from, part.to], half: band.half }];
    return part.kind === 'curve' ? [{ kind: 'band', name: null, tone: 'right', path: part.path, half: band.half }] : [];
  });
}

function arrowParts({ arrow }: RedMark): Part[] {
  if (!arrow) return [];
  const long = Math.hypot(arrow.to.x - arrow.from.x, arrow.to.y - arrow.from.y);
  return long < LEAST_ARROW ? [] : [{ kind: 'arrow', name: null, tone: 'red', from: arrow.from, to: arrow.to }];
}
