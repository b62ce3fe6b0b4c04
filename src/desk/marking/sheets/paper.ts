import type { ExerciseWork } from './student-work.ts';

/**
 * How a sheet goes on paper, in mm, on A4 with the margins of a usual printer; measured in a printed class, and near enough to say
 * how many pages a sheet takes.
 */
const PAGE = 265;
const HEAD = 18;
/** A piece with something off: what stands over its drawing, the drawing, and what is said of one answer that is off. */
const OVER = 14;
const DRAWING = 81;
const NOTE = 56;
/** Right pieces two in a row, drawn small or only told; and an exercise of which nothing came. */
const DRAWN_ROW = 62;
const TOLD_ROW = 22;
const NOTHING = 18;

/** What is shown of a draft in which everything is right: a small drawing, or that it is right. */
export type RightShown = 'drawn' | 'told';

/** Right drafts are drawn too, unless that takes another page: the paper is for what is off. */
export function rightShown(work: readonly ExerciseWork[]): RightShown {
  return pagesWith(work, DRAWN_ROW) > pagesWith(work, TOLD_ROW) ? 'told' : 'drawn';
}

function pagesWith(work: readonly ExerciseWork[], row: number): number {
  let [pages, filled, beside] = [1, HEAD, false];
  for (const one of work) {
    const right = isRight(one);
    // Does it stand beside the right one before it?
    if (right && beside) {
      beside = false;
      continue;
    }
    beside = right;
    const high = right ? row : heightOf(one);
    // Nothing is broken: what does not fit begins a page.
    if (filled + high > PAGE) [pages, filled] = [pages + 1, 0];
    filled += high;
  }
  return pages;
}

/** By the grader alone: what a teacher changed or wrote has room beside the drawing. */
function isRight({ counted }: ExerciseWork): boolean {
  return counted !== null && wrongTargets(counted).size + counted.piece.row.problems.length === 0;
}

function heightOf({ counted }: ExerciseWork): number {
  return counted === null ? NOTHING : OVER + Math.max(DRAWING, NOTE * wrongTargets(counted).size);
}

function wrongTargets({ piece }: NonNullable<ExerciseWork['counted']>): ReadonlySet<string> {
  return new Set(piece.row.checks.filter(({ status }) => status !== 'within').map(({ target }) => target));
}
