import type { VNode } from 'preact';
import type { Bench } from '../model/bench.ts';
import type { Say } from '../say.ts';
import type { Dispatch } from '../use-bench.ts';

interface CheckBarProps {
  readonly bench: Bench;
  readonly say: Say;
  readonly dispatch: Dispatch;
  readonly onCheck: () => void;
}

/** Undo, redo, and having the draft marked. */
export function CheckBar({ bench, say, dispatch, onCheck }: CheckBarProps): VNode {
  return (
    <div class="check-bar">
      <button type="button" class="button" data-do="undo" disabled={bench.past.length === 0} onClick={() => dispatch({ do: 'undo' })}>
        {say('table.undo')}
      </button>
      <button type="button" class="button" data-do="redo" disabled={bench.future.length === 0} onClick={() => dispatch({ do: 'redo' })}>
        {say('table.redo')}
      </button>
      <button type="button" class="button button--first" data-do="check" onClick={onCheck}>
        {say('table.check')}
      </button>
    </div>
  );
}
