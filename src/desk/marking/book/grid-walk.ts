/** A cell of a table that is walked by keyboard: its line, with the heads at 0, and its column, from 0. */
export interface GridCell {
  readonly row: number;
  readonly col: number;
}

/** The heads of a table, as a line of it. No key of a line is the same: that of work without a name is empty. */
export const HEADS: null = null;

/** Where among the lines that are shown the one with this key is, from 0; -1 for the heads, and where it is not shown. */
export function placeOf(line: string | null, shown: readonly { readonly key: string }[]): number {
  return line === HEADS ? -1 : shown.findIndex(({ key }) => key === line);
}

/** How far a page goes, in lines. */
const PAGE = 10;

/**
 * The cell that a key goes to, by the grid pattern of the ARIA Authoring Practices: arrows a cell, Home and End to the ends of
 * the line, with Ctrl to the ends of the table, Page Up and Page Down ten lines. Null of any other key. Nothing goes past
 * the edge of a table of `rows` lines, the heads among them, and `cols` columns.
 */
export function walkedTo(from: GridCell, key: string, ctrl: boolean, rows: number, cols: number): GridCell | null {
  const to = way(from, key, ctrl, { row: rows - 1, col: cols - 1 });
  if (to === null) return null;
  return { row: within(to.row, rows), col: within(to.col, cols) };
}

function way({ row, col }: GridCell, key: string, ctrl: boolean, last: GridCell): GridCell | null {
  switch (key) {
    case 'ArrowUp':
      return { row: row - 1, col };
    case 'ArrowDown':
      return { row: row + 1, col };
    case 'ArrowLeft':
      return { row, col: col - 1 };
    case 'ArrowRight':
      return { row, col: col + 1 };
    case 'Home':
      return { row: ctrl ? 0 : row, col: 0 };
    case 'End':
      return { row: ctrl ? last.row : row, col: last.col };
    case 'PageUp':
      return { row: row - PAGE, col };
    case 'PageDown':
      return { row: row + PAGE, col };
    default:
      return null;
  }
}

function within(value: number, count: number): number {
  return Math.min(Math.max(value, 0), count - 1);
}
