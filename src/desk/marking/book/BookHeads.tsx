import type { VNode } from 'preact';
import type { Say } from '../../../table/say.ts';
import { gridRoles } from './grid-roles.ts';
import type { Order } from './sorted.ts';

interface BookHeadsProps {
  readonly exercises: readonly string[];
  /** Those of them that the set has not. */
  readonly others: readonly string[];
  readonly titles: ReadonlyMap<string, string>;
  /** What all of it is worth. */
  readonly of: number;
  readonly order: Order;
  /** The column in which the keyboard stands; null where it stands in another line. */
  readonly standing: number | null;
  readonly say: Say;
  readonly onSort: (order: Order) => void;
}

/** The heads of the gradebook, by which it is sorted. */
export function BookHeads({ exercises, others, titles, of, order, standing, say, onSort }: BookHeadsProps): VNode {
  const headOf = (exercise: string): string => {
    const title = titles.get(exercise) ?? exercise;
    return others.includes(exercise) ? say('mark.head-other', { title }) : title;
  };
  const columns: readonly (readonly [Order, string])[] = [
    [{ by: 'name' }, say('mark.student')],
    ...exercises.map((exercise) => [{ by: 'exercise', exercise }, headOf(exercise)] as const),
    [{ by: 'sum' }, say('mark.sum', { of })],
  ];
  return (
    <tr {...gridRoles.line} aria-rowindex={1}>
      {columns.map(([to, words], at) => (
        <th {...gridRoles.head} aria-sort={sortedBy(order, to)} key={keyOf(to)}>
          <button type="button" class="book-sort" tabIndex={at === standing ? 0 : -1} onClick={() => onSort(to)}>
            {words}
          </button>
        </th>
      ))}
    </tr>
  );
}

function sortedBy(order: Order, to: Order): 'descending' | 'ascending' | undefined {
  if (keyOf(order) !== keyOf(to)) return undefined;
  return to.by === 'name' ? 'ascending' : 'descending';
}

function keyOf(order: Order): string {
  return order.by === 'exercise' ? `${order.by}/${order.exercise}` : order.by;
}
