import type { VNode } from 'preact';
import type { Quantity } from '../../drafting/quantity.ts';
import type { Name } from '../../drafting/step.ts';
import type { Target } from '../../grader/exercise.ts';
import { written } from '../../words/message.ts';
import type { Say } from '../say.ts';
import { valuesOf } from './Brief.tsx';

interface HintsProps {
  readonly targets: readonly Target[];
  readonly measures: ReadonlyMap<Name, Quantity>;
  /** How many hints of each target stand open. */
  readonly open: Readonly<Record<Name, number>>;
  readonly say: Say;
  readonly onOpen: (target: Name) => void;
}

/** Hints in three tiers: where to look, which tool, the step itself. Each is opened only when asked for. */
export function Hints({ targets, measures, open, say, onOpen }: HintsProps): VNode {
  return (
    <details class="hints">
      <summary>{say('table.hints')}</summary>
      {targets.map(({ name, hints }) => {
        const count = open[name] ?? 0;
        return (
          <div key={name} class="hint">
            <h3>{say('table.label', { name: { named: name } })}</h3>
            <ol aria-live="polite">
              {hints.slice(0, count).map((hint) => (
                <li key={hint}>{say.message(written(hint, valuesOf(measures)))}</li>
              ))}
            </ol>
            {count < hints.length ? (
              <button type="button" class="button" onClick={() => onOpen(name)}>
                {count === 0 ? say('table.hint-for', { target: { named: name } }) : say('table.hint-more')}
              </button>
            ) : null}
          </div>
        );
      })}
    </details>
  );
}
