import type { Givens } from '../drafting/sheet.ts';
import { orderOf } from '../exchange/order-from.ts';
import type { Exercise } from '../grader/exercise.ts';
import { layOut } from '../grader/lay-out.ts';
import type { Order } from '../grader/order.ts';
import type { Message } from '../words/message.ts';
import type { Room } from './model/bench.ts';
import type { Setting } from './model/setting.ts';

export type Laid =
  | { readonly ok: true; readonly order: Order; readonly givens: Givens; readonly marker: Givens }
  | { readonly ok: false; readonly message: Message };

/** Lays the order of a setting on the table. */
export function lay(exercise: Exercise, setting: Setting): Laid {
  const made = orderOf(setting, exercise);
  if (!made.ok) return made;
  const dealt = layOut(exercise, made.order);
  return dealt.ok ? { ok: true, order: made.order, givens: dealt.learner, marker: dealt.givens } : dealt;
}

/** An order as it lies on the table. */
export interface OrderOnTable extends Room {
  readonly order: Order;
}

/** The orders of one exercise, each laid once. */
export interface LaidOrders {
  readonly of: (setting: Setting) => OrderOnTable;
  /** Why a setting cannot be laid; null where it can. */
  readonly trouble: (setting: Setting) => Message | null;
}

const nothing = {
  order: { figure: {} as Order['figure'], style: {}, house: {} },
  givens: { shapes: new Map(), measures: new Map() },
  marker: { shapes: new Map(), measures: new Map() },
};

export function laidOrders(exercise: Exercise): LaidOrders {
  const { targets } = exercise;
  const laid = new WeakMap<Setting, OrderOnTable>();
  const of = (setting: Setting): OrderOnTable => {
    const known = laid.get(setting);
    if (known) return known;
    const tried = lay(exercise, setting);
    const { order, givens, marker } = tried.ok ? tried : nothing;
    const onTable = { order, givens, marker, targets };
    laid.set(setting, onTable);
    return onTable;
  };
  return {
    of,
    trouble: (setting) => {
      const tried = lay(exercise, setting);
      return tried.ok ? null : tried.message;
    },
  };
}
