import type { WorkRow } from '../grade-row.ts';

/** The drafts whose right answers hold on their own figure and not on every other: a number was typed, or a mark made by eye. */
export function lettingGo<W extends { readonly row: Pick<WorkRow, 'otherFigures'> }>(work: readonly W[]): readonly W[] {
  return work.filter(({ row: { otherFigures } }) => otherFigures.held < otherFigures.tried);
}
