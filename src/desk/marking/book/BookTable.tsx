import type { VNode } from 'preact';
import { useCallback, useMemo, useRef, useState } from 'preact/hooks';
import type { Gradebook } from '../../../exchange/class/gradebook.ts';
import type { Say } from '../../../table/say.ts';
import { BookHeads } from './BookHeads.tsx';
import { BookRow } from './BookRow.tsx';
import './book-table.css';
import { gridRoles } from './grid-roles.ts';
import { placeOf } from './grid-walk.ts';
import { type Filter, type Order, shownLines } from './sorted.ts';
import { useGrid } from './use-grid.ts';

interface BookTableProps {
  readonly book: Gradebook;
  readonly titles: ReadonlyMap<string, string>;
  readonly say: Say;
  /** Opens a student's work on an exercise. */
  readonly onOpen: (student: string, exercise: string) => void;
}

/** The gradebook: a line a student, a column an exercise. What is not as the set has it stands under the name. */
export function BookTable({ book, titles, say, onOpen }: BookTableProps): VNode {
  const [order, setOrder] = useState<Order>({ by: 'name' });
  const [filter, setFilter] = useState<Filter>({ text: '', onlyRemarked: false });
  const lines = useMemo(() => shownLines(book.lines, order, filter), [book, order, filter]);
  const { at, listen } = useGrid();
  const latest = useRef(onOpen);
  latest.current = onOpen;
  const open = useCallback((student: string, exercise: string) => latest.current(student, exercise), []);
  const rowOf = (index: number, standing: number | null): VNode | null => {
    const line = lines[index];
    const places = { lines: book.lines, exercises: book.exercises, index: index + 2, standing, say, onOpen: open };
    return line ? <BookRow key={line.key} line={line} {...places} /> : null;
  };
  // A thousand lines are put together once, and not at every step through them: only the line one stands in is made anew.
  // biome-ignore lint/correctness/useExhaustiveDependencies: the lines stand for themselves.
  const rows = useMemo(() => lines.map((_, index) => rowOf(index, null)), [lines, book.lines, book.exercises, say]);
  const here = placeOf(at.line, lines);
  const columns = book.exercises.length + 2;
  const col = Math.min(at.col, columns - 1);
  return (
    <>
      <BookFilter filter={filter} say={say} onFilter={setFilter} />
      <section class="book-frame">
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
              titles={titles}
              of={book.of}
              order={order}
              standing={here < 0 ? col : null}
              say={say}
              onSort={setOrder}
            />
          </thead>
          {sheaves(here < 0 ? rows : rows.with(here, rowOf(here, col))).map((sheaf, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a sheaf is a place in the table, whoever stands there.
            <tbody key={index} {...gridRoles.lines}>
              {sheaf}
            </tbody>
          ))}
        </table>
      </section>
      {lines.length < book.lines.length ? (
        <p class="small">{say('mark.shown', { shown: lines.length, all: book.lines.length })}</p>
      ) : null}
    </>
  );
}

/** So many lines are left unpainted together while they are out of sight. */
const SHEAF = 20;

function sheaves<T>(lines: readonly T[]): readonly (readonly T[])[] {
  const count = Math.ceil(lines.length / SHEAF);
  return Array.from({ length: count }, (_, index) => lines.slice(index * SHEAF, (index + 1) * SHEAF));
}

interface BookFilterProps {
  readonly filter: Filter;
  readonly say: Say;
  readonly onFilter: (filter: Filter) => void;
}

function BookFilter({ filter, say, onFilter }: BookFilterProps): VNode {
  return (
    <div class="book-filter">
      <label class="field">
        <span>{say('mark.filter')}</span>
        <input
          type="text"
          value={filter.text}
          onInput={({ currentTarget }) => onFilter({ ...filter, text: currentTarget.value })}
        />
      </label>
      <label class="desk-tick">
        <input
          type="checkbox"
          checked={filter.onlyRemarked}
          onChange={({ currentTarget }) => onFilter({ ...filter, onlyRemarked: currentTarget.checked })}
        />{' '}
        {say('mark.only-remarked')}
      </label>
    </div>
  );
}
