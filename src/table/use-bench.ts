import { useCallback, useReducer, useRef } from 'preact/hooks';
import type { Action } from './model/action.ts';
import { type Bench, emptyBench, type Room } from './model/bench.ts';
import { reduce } from './model/reduce.ts';

export type Dispatch = (action: Action) => void;

interface Move {
  readonly action: Action;
  readonly room: Room;
}

/** The bench as state: actions are carried out in the room as it is when they are made. */
export function useBench(room: Room): readonly [Bench, Dispatch] {
  const now = useRef(room);
  now.current = room;
  const [bench, move] = useReducer(
    (before: Bench, { action, room: at }: Move) => reduce(before, action, at),
    emptyBench,
  );
  const dispatch = useCallback((action: Action) => move({ action, room: now.current }), []);
  return [bench, dispatch];
}
