import type { BookLine } from '../../../exchange/class/gradebook.ts';

/** By what a gradebook is sorted: the name, the sum, or an exercise. */
export type Order =
  | { readonly by: 'name' }
  | { readonly by: 'sum' }
  | { readonly by: 'exercise'; readonly exercise: string };

/** Which lines are shown: those whose name or number has the text in it, and, if asked, only those with a remark. */
export interface Filter {
  readonly text: string;
  readonly onlyRemarked: boolean;
}

/** The lines that are shown, in their order: marks the highest first, and without a mark last. */
export function shownLines(
  lines: readonly BookLine[],
  order: Order,
  { text, onlyRemarked }: Filter,
): readonly BookLine[] {
  const wanted = folded(text);
  const shown = lines.filter(
    (line) =>
      folded(`${line.student} ${line.number}`).includes(wanted) &&
      (!onlyRemarked ||
        line.listed !== null ||
        line.until !== null ||
        line.unread.length > 0 ||
        [...line.entries.values()].some(({ remarks }) => remarks.length > 0)),
  );
  if (order.by === 'name') return shown;
  const marks = (line: BookLine): number =>
    order.by === 'sum' ? line.marks : (line.entries.get(order.exercise)?.marks ?? Number.NEGATIVE_INFINITY);
  return shown.toSorted((a, b) => (marks(a) === marks(b) ? 0 : marks(b) - marks(a)));
}

/** Without regard to capitals and accents. */
function folded(text: string): string {
  return text
    .normalize('NFKD')
    .replaceAll(/\p{Mn}/gu, '')
    .toLowerCase();
}
