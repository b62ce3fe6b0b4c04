import type { Action } from './action.ts';
import type { Draft } from './bench.ts';
import { amend } from './steps.ts';

/** Puts a free mark elsewhere, or bends a curve: what a drag does at each of its moves. */
export type Move = Extract<Action, { do: 'move' | 'bend' }>;

/** The draft after a move; null where it has no such step. Only the last of many moves of one thing counts. */
export function moved(draft: Draft, move: Move): Draft | null {
  const index = draft.steps.findIndex((step) => step.name === move.name);
  const verb = draft.steps[index]?.verb;
  if (move.do === 'move') return verb === 'pencil' ? amend(draft, index, 'at', move.at) : null;
  return verb === 'curve' ? amend(draft, index, 'shape', move.shape) : null;
}
