import type { VNode } from 'preact';
import { useCallback, useMemo, useRef } from 'preact/hooks';
import type { BookLine, Gradebook } from '../../../exchange/class/gradebook.ts';
import type { Say } from '../../../table/say.ts';
import { BookHeads } from './BookHeads.tsx';
import { BookRow } from './BookRow.tsx';
import { gridRoles } from './grid-roles.ts';
import { placeOf } from './grid-walk.ts';
import type { Order } from './sorted.ts';
import { type GridPlace, useGrid } from './use-grid.ts';

interface BookGridProps {
  readonly book: Gradebook;
  /** The lines that are shown, in their order. */
  readonly lines: readonly BookLine[];
  readonly titles: ReadonlyMap<string, string>;
  readonly order: Order;
  readonly say: Say;
  readonly onSort: (order: Order) => void;
  readonly onOpen: (student: string, exercise: string) => void;
}

/** The table of the gradebook, which is walked by keyboard. */
export function BookGrid(props: BookGridProps): VNode {
  const { book, lines, titles, order, say, onSort } = props;
  const { at, listen } = useGrid();
  const columns = book.exercises.length + 2;
  const col = Math.min(at.col, columns - 1);
  const { rows, standing } = useRows(props, { line: at.line, col });
  return (
    <table
      class="book"
      {...gridRoles.grid}
      aria-label={say('mark.table')}
      aria-rowcount={lines.length + 1}
      aria-colcount={columns}
      {...listen}
    >
      <thead {...gridRoles.lines}>
        <BookHeads
          exercises={book.exercises}
          others={book.others}
          titles={titles}
          of={book.of}
          order={order}
          standing={standing ? null : col}
          say={say}
          onSort={onSort}
        />
      </thead>
      {sheaves(rows).map((sheaf, index) => (
        // biome-ignore lint/suspicious/noArrayIndexKey: a sheaf is a place in the table, whoever stands there.
        <tbody key={index} {...gridRoles.lines}>
          {sheaf}
        </tbody>
      ))}
    </table>
  );
}

/** The lines put together, and whether the keyboard stands in one of them. A thousand are made once, and not at every step through them: only the one that is stood in is made anew. */
function useRows(
  { book, lines, say, onOpen }: BookGridProps,
  at: GridPlace,
): { readonly rows: readonly (VNode | null)[]; readonly standing: boolean } {
  const latest = useRef(onOpen);
  latest.current = onOpen;
  const open = useCallback((student: string, exercise: string) => latest.current(student, exercise), []);
  const rowOf = (index: number, col: number | null): VNode | null => {
    const line = lines[index];
    const { exercises, others } = book;
    const places = { lines: book.lines, exercises, others, index: index + 2, standing: col, say, onOpen: open };
    return line ? <BookRow key={line.key} line={line} {...places} /> : null;
  };
  // biome-ignore lint/correctness/useExhaustiveDependencies: the lines stand for themselves.
  const rows = useMemo(
    () => lines.map((_, index) => rowOf(index, null)),
    [lines, book.lines, book.exercises, book.others, say],
  );
  const here = placeOf(at.line, lines);
  return here < 0 ? { rows, standing: false } : { rows: rows.with(here, rowOf(here, at.col)), standing: true };
}

/** So many lines are left unpainted together while they are out of sight. */
const SHEAF = 20;

function sheaves<T>(lines: readonly T[]): readonly (readonly T[])[] {
  const count = Math.ceil(lines.length / SHEAF);
  return Array.from({ length: count }, (_, index) => lines.slice(index * SHEAF, (index + 1) * SHEAF));
}
