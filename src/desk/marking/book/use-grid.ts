import { useState } from 'preact/hooks';
import { HEADS, walkedTo } from './grid-walk.ts';

/** Where in a table the keyboard stands: a line by its key, and a column. */
export interface GridPlace {
  readonly line: string | null;
  readonly col: number;
}

export interface Grid {
  readonly at: GridPlace;
  /** What the table element listens with. */
  readonly listen: {
    readonly onKeyDown: (event: KeyboardEvent) => void;
    readonly onFocusIn: (event: FocusEvent) => void;
  };
}

/**
 * A table with one stop for the Tab key, walked by arrows (the grid pattern of the ARIA Authoring Practices). Every line says
 * its key in `data-line`; in a cell it is the button that is stood on, where there is one. The table's own rows are asked where a
 * cell stands, so lines may be sorted and left out at will.
 */
export function useGrid(): Grid {
  const [at, setAt] = useState<GridPlace>({ line: HEADS, col: 0 });
  const onFocusIn = ({ target }: FocusEvent): void => {
    const cell = cellOf(target);
    const row = cell && rowOf(cell);
    if (cell && row) setAt({ line: row.dataset['line'] ?? HEADS, col: cell.cellIndex });
  };
  const onKeyDown = (event: KeyboardEvent): void => {
    const { key, ctrlKey, metaKey, altKey, shiftKey } = event;
    if (altKey || shiftKey || metaKey) return;
    const cell = cellOf(event.target);
    const row = cell && rowOf(cell);
    const table = row?.closest('table');
    if (!cell || !row || !table) return;
    const from = { row: row.rowIndex, col: cell.cellIndex };
    const to = walkedTo(from, key, ctrlKey, table.rows.length, row.cells.length);
    if (to === null) return;
    event.preventDefault();
    stand(table.rows[to.row]?.cells[to.col]);
  };
  return { at, listen: { onKeyDown, onFocusIn } };
}

function stand(cell: HTMLTableCellElement | undefined): void {
  (cell?.querySelector('button') ?? cell)?.focus();
}

function cellOf(target: EventTarget | null): HTMLTableCellElement | null {
  return target instanceof Element ? target.closest<HTMLTableCellElement>('th, td') : null;
}

function rowOf(cell: HTMLTableCellElement): HTMLTableRowElement | null {
  return cell.closest('tr');
}
