import type { VNode } from 'preact';
import type { Say } from '../say.ts';
import type { Dispatch } from '../use-bench.ts';
import { KeptButton } from './KeptButton.tsx';
import { StepLine } from './StepLine.tsx';
import type { StepLineProps } from './step-line-props.ts';

type WorkingProps = Omit<StepLineProps, 'index' | 'step'>;

/** The draft as numbered instructions. Each can be changed where it stands; stepping back through them replays the draft. */
export function Working(props: WorkingProps): VNode {
  const { bench, say, dispatch } = props;
  const { steps, upTo } = bench;
  return (
    <section class="working" aria-labelledby="working-title">
      <header class="working-head">
        <h2 id="working-title">{say('table.working')}</h2>
        {steps.length > 0 ? <Walk upTo={upTo} of={steps.length} say={say} dispatch={dispatch} /> : null}
      </header>
      {steps.length === 0 ? (
        <p class="working-empty">{say('table.working-empty')}</p>
      ) : (
        <ol class="working-steps">
          {steps.map((step, index) => (
            // biome-ignore lint/suspicious/noArrayIndexKey: a step that is given another name stays where it is, and keeps the focus.
            <StepLine key={index} index={index} step={step} {...props} />
          ))}
        </ol>
      )}
      {steps.length > 0 ? (
        <button
          type="button"
          class="button button--quiet"
          data-do="clear-sheet"
          onClick={() => dispatch({ do: 'clear-sheet' })}
        >
          {say('table.clear-sheet')}
        </button>
      ) : null}
    </section>
  );
}

interface WalkProps {
  readonly upTo: number;
  readonly of: number;
  readonly say: Say;
  readonly dispatch: Dispatch;
}

/** Back and forth through the working. */
function Walk({ upTo, of, say, dispatch }: WalkProps): VNode {
  return (
    <div class="walk">
      <KeptButton
        class="button"
        does="step-back"
        idle={upTo === 0}
        onPress={() => dispatch({ do: 'go', upTo: upTo - 1 })}
      >
        {say('table.step-back')}
      </KeptButton>
      <span class="walk-place">{say('table.standing', { step: upTo, of })}</span>
      <KeptButton
        class="button"
        does="step-on"
        idle={upTo === of}
        onPress={() => dispatch({ do: 'go', upTo: upTo + 1 })}
      >
        {say('table.step-on')}
      </KeptButton>
      <KeptButton class="button" does="step-end" idle={upTo === of} onPress={() => dispatch({ do: 'go', upTo: of })}>
        {say('table.step-end')}
      </KeptButton>
    </div>
  );
}
