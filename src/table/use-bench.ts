import { useCallback, useMemo, useReducer } from 'preact/hooks';
import type { Exercise } from '../grader/exercise.ts';
import { type LaidOrders, laidOrders } from './laid-orders.ts';
import type { About } from './model/about.ts';
import type { Action } from './model/action.ts';
import { type Bench, emptyBench } from './model/bench.ts';
import { reduce } from './model/reduce.ts';

export type Dispatch = (action: Action) => void;

/** The bench as state: an action is carried out on the order that lies on the table when it is made. */
export function useBench(exercise: Exercise, start: () => About): readonly [Bench, Dispatch, LaidOrders] {
  const orders = useMemo(() => laidOrders(exercise), [exercise]);
  const [bench, move] = useReducer(
    (before: Bench, action: Action) => reduce(before, action, orders.of(before.about.setting)),
    null,
    () => emptyBench(start()),
  );
  return [bench, useCallback((action: Action) => move(action), []), orders];
}
