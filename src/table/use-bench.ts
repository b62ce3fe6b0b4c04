import { useCallback, useMemo, useReducer } from 'preact/hooks';
import type { Exercise } from '../grader/exercise.ts';
import { InMotion } from './in-motion.ts';
import { type LaidOrders, laidOrders } from './laid-orders.ts';
import type { About } from './model/about.ts';
import type { Action } from './model/action.ts';
import { type Bench, emptyBench } from './model/bench.ts';
import { reduce } from './model/reduce.ts';

export type Dispatch = (action: Action) => void;

interface BenchInHand {
  readonly bench: Bench;
  readonly dispatch: Dispatch;
  readonly orders: LaidOrders;
  readonly motion: InMotion;
}

/**
 * The bench as state: an action is carried out on the order that lies on the table when it is made, and after what is in motion
 * at that moment.
 */
export function useBench(exercise: Exercise, start: () => About): BenchInHand {
  const orders = useMemo(() => laidOrders(exercise), [exercise]);
  const [bench, carryOut] = useReducer(
    (before: Bench, action: Action) => reduce(before, action, orders.of(before.about.setting)),
    null,
    () => emptyBench(start()),
  );
  const motion = useMemo(() => new InMotion(carryOut), []);
  const dispatch = useCallback(
    (action: Action) => {
      motion.settle();
      carryOut(action);
    },
    [motion],
  );
  return { bench, dispatch, orders, motion };
}
