import type { VNode } from 'preact';
import type { Name } from '../../drafting/step.ts';
import type { Hand } from '../model/bench.ts';
import type { Option } from '../model/options.ts';
import type { Say } from '../say.ts';
import type { Dispatch } from '../use-bench.ts';

interface ChipsProps {
  readonly hand: Hand;
  readonly options: readonly Option[];
  readonly say: Say;
  readonly dispatch: Dispatch;
  readonly onLight: (name: Name | null) => void;
}

/** What the blank in hand offers, laid out in a row under the sentence: one press fills it. */
export function Chips({ hand, options, say, dispatch }: ChipsProps): VNode {
  const { at } = hand;
  return (
    <div class="chips">
      {options.map((option) => (
        <button
          key={String(option.value)}
          type="button"
          class="chip"
          onClick={() => at !== null && dispatch({ do: 'fill', field: at, value: option.value })}
        >
          {say.message(option.words)}
        </button>
      ))}
    </div>
  );
}
