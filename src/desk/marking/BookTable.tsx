import type { VNode } from 'preact';
import { useMemo, useState } from 'preact/hooks';
import type { BookLine, Entry, Gradebook } from '../../exchange/class/gradebook.ts';
import type { Say } from '../../table/say.ts';
import { spelled } from '../../words/unseen.ts';
import { type Filter, type Order, shownLines } from './sorted.ts';

interface BookTableProps {
  readonly book: Gradebook;
  readonly titles: ReadonlyMap<string, string>;
  readonly say: Say;
  /** Opens a student's work on an exercise. */
  readonly onOpen: (student: string, exercise: string) => void | Promise<void>;
}

/** The gradebook: a line a student, a column an exercise. What is not as the set has it stands under the name. */
export function BookTable({ book, titles, say, onOpen }: BookTableProps): VNode {
  const [order, setOrder] = useState<Order>({ by: 'name' });
  const [filter, setFilter] = useState<Filter>({ text: '', onlyRemarked: false });
  const lines = useMemo(() => shownLines(book.lines, order, filter), [book, order, filter]);
  const sorts = (to: Order): 'descending' | 'ascending' | undefined => {
    const same =
      order.by === to.by && (to.by !== 'exercise' || (order.by === 'exercise' && order.exercise === to.exercise));
    if (!same) return undefined;
    return to.by === 'name' ? 'ascending' : 'descending';
  };
  const head = (to: Order, words: string): VNode => (
    <th scope="col" aria-sort={sorts(to)} key={words}>
      <button type="button" class="book-sort" onClick={() => setOrder(to)}>
        {words}
      </button>
    </th>
  );
  return (
    <>
      <div class="book-filter">
        <label class="field">
          <span>{say('mark.filter')}</span>
          <input
            type="text"
            value={filter.text}
            onInput={({ currentTarget }) => setFilter({ ...filter, text: currentTarget.value })}
          />
        </label>
        <label class="desk-tick">
          <input
            type="checkbox"
            checked={filter.onlyRemarked}
            onChange={({ currentTarget }) => setFilter({ ...filter, onlyRemarked: currentTarget.checked })}
          />{' '}
          {say('mark.only-remarked')}
        </label>
      </div>
      {/* biome-ignore lint/a11y/noNoninteractiveTabindex: a region that scrolls is reached by keyboard too. */}
      <section class="book-frame" tabIndex={0} aria-label={say('mark.table')}>
        <table class="book">
          <thead>
            <tr>
              {head({ by: 'name' }, say('mark.student'))}
              {book.exercises.map((exercise) => head({ by: 'exercise', exercise }, titles.get(exercise) ?? exercise))}
              {head({ by: 'sum' }, say('mark.sum', { of: book.of }))}
            </tr>
          </thead>
          <tbody>
            {lines.map((line) => (
              <Line key={line.key} line={line} exercises={book.exercises} say={say} onOpen={onOpen} />
            ))}
          </tbody>
        </table>
      </section>
      {lines.length < book.lines.length ? (
        <p class="small">{say('mark.shown', { shown: lines.length, all: book.lines.length })}</p>
      ) : null}
    </>
  );
}

interface LineProps {
  readonly line: BookLine;
  readonly exercises: readonly string[];
  readonly say: Say;
  readonly onOpen: BookTableProps['onOpen'];
}

function Line({ line, exercises, say, onOpen }: LineProps): VNode {
  const name = line.student.trim() === '' ? say('mark.nobody') : spelled(line.student);
  return (
    <tr>
      <th scope="row">
        {name} <span class="book-number">{spelled(line.number)}</span>
        <Remarks entries={[...line.entries.values()]} say={say} />
      </th>
      {exercises.map((exercise) => {
        const entry = line.entries.get(exercise);
        return (
          <td key={exercise}>
            {entry ? (
              <button
                type="button"
                class="book-open"
                data-cell={`${line.key}/${exercise}`}
                data-by-hand={entry.grader !== undefined}
                title={byHand(entry, say)}
                aria-label={say('mark.open-what', { student: name, marks: marksSaid(entry, say) })}
                onClick={() => onOpen(line.key, exercise)}
              >
                {tidy(entry.marks)}
              </button>
            ) : (
              <span class="book-none">{say('mark.none')}</span>
            )}
          </td>
        );
      })}
      <td class="book-sum">{tidy(line.marks)}</td>
    </tr>
  );
}

/** Where the teacher's marks count: what the grader gave. */
function byHand({ grader }: Entry, say: Say): string | undefined {
  return grader === undefined ? undefined : say('mark.by-hand', { grader: tidy(grader) });
}

function marksSaid(entry: Entry, say: Say): string {
  return [tidy(entry.marks), byHand(entry, say)].filter((words) => words !== undefined).join(', ');
}

/** What is not as the set has it, each remark once. */
function Remarks({ entries, say }: { readonly entries: readonly Entry[]; readonly say: Say }): VNode | null {
  const remarks = [...new Set(entries.flatMap((entry) => entry.remarks))];
  if (remarks.length === 0) return null;
  return <span class="book-remarks">{remarks.map((remark) => say(`remark.${remark}`)).join('; ')}</span>;
}

/** To a tenth, without a needless zero; the file keeps every digit. */
function tidy(marks: number): string {
  return String(Math.round(marks * 10) / 10);
}
