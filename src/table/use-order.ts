import { useMemo, useState } from 'preact/hooks';
import type { Givens } from '../drafting/sheet.ts';
import { orderOf } from '../exchange/order-from.ts';
import type { Exercise } from '../grader/exercise.ts';
import { layOut } from '../grader/lay-out.ts';
import type { Order } from '../grader/order.ts';
import type { Message } from '../words/message.ts';
import { type Setting, startSetting } from './model/setting.ts';

export type Laid =
  | { readonly ok: true; readonly order: Order; readonly givens: Givens }
  | { readonly ok: false; readonly message: Message };

/** Lays the order of a setting on the table. */
export function lay(exercise: Exercise, setting: Setting): Laid {
  const made = orderOf(setting, exercise);
  if (!made.ok) return made;
  const dealt = layOut(exercise, made.order);
  return dealt.ok ? { ok: true, order: made.order, givens: dealt.givens } : dealt;
}

export interface OrderOnTable {
  readonly setting: Setting;
  readonly order: Order;
  readonly givens: Givens;
  /** Lays another order; says why where it cannot be laid, and leaves the table as it is. */
  readonly setSetting: (setting: Setting) => Message | null;
}

const noGivens: Givens = { shapes: new Map(), measures: new Map() };

/** The order on the table. */
export function useOrder(exercise: Exercise, seed: string): OrderOnTable {
  const [setting, setSetting] = useState<Setting>(() => startSetting(exercise, seed));
  const laid = useMemo(() => lay(exercise, setting), [exercise, setting]);
  return {
    setting,
    order: laid.ok ? laid.order : { figure: {} as Order['figure'], style: {}, house: {} },
    givens: laid.ok ? laid.givens : noGivens,
    setSetting: (next) => {
      const tried = lay(exercise, next);
      if (tried.ok) setSetting(next);
      return tried.ok ? null : tried.message;
    },
  };
}
