import type { VNode } from 'preact';
import { useMemo, useState } from 'preact/hooks';
import type { Gradebook } from '../../../exchange/class/gradebook.ts';
import type { Say } from '../../../table/say.ts';
import { BookFilter } from './BookFilter.tsx';
import { BookGrid } from './BookGrid.tsx';
import './book-table.css';
import { type Filter, type Order, shownLines } from './sorted.ts';
import { useSlides } from './use-slides.ts';

interface BookTableProps {
  readonly book: Gradebook;
  readonly titles: ReadonlyMap<string, string>;
  readonly say: Say;
  /** Opens a student's work on an exercise. */
  readonly onOpen: (student: string, exercise: string) => void;
}

/** So many lines are seen whole; more of them slide in a frame, where what is out of sight is left unpainted. */
const WHOLE = 40;

/** The gradebook: a line a student, a column an exercise. What is not as the set has it stands under the name. */
export function BookTable({ book, titles, say, onOpen }: BookTableProps): VNode {
  const [order, setOrder] = useState<Order>({ by: 'name' });
  const [filter, setFilter] = useState<Filter>({ text: '', onlyRemarked: false });
  const lines = useMemo(() => shownLines(book.lines, order, filter), [book, order, filter]);
  const { frame, before, after } = useSlides();
  return (
    <>
      <BookFilter filter={filter} say={say} onFilter={setFilter} />
      <p class="small book-hint">{before || after ? say('mark.slides') : null}</p>
      <div class="book-place" data-before={before} data-after={after}>
        <section class="book-frame" data-whole={lines.length <= WHOLE} ref={frame}>
          <BookGrid
            book={book}
            lines={lines}
            titles={titles}
            order={order}
            say={say}
            onSort={setOrder}
            onOpen={onOpen}
          />
        </section>
      </div>
      {lines.length < book.lines.length ? (
        <p class="small">{say('mark.shown', { shown: lines.length, all: book.lines.length })}</p>
      ) : null}
    </>
  );
}
