import type { VNode } from 'preact';
import { KeptButton } from '../parts/KeptButton.tsx';
import type { Say } from '../say.ts';
import type { Stages } from './use-stages.ts';

interface StageKeysProps {
  readonly stages: Stages;
  /** The moments that steps go to, 0 to 1, in order. */
  readonly stops: readonly number[];
  /** What is to be seen at this moment; said aloud when it was stepped to. */
  readonly says: string;
  readonly say: Say;
}

/** A moment this near a stop, as a part of the whole, is at it. */
const NEAR = 1e-6;

/** Under something that moves: step back, step on, and see it move. Those who ask for less motion step only. */
export function StageKeys({ stages, stops, says, say }: StageKeysProps): VNode {
  const { fraction, moving, still, goTo, run } = stages;
  const before = stops.findLast((stop) => stop < fraction - NEAR);
  const after = stops.find((stop) => stop > fraction + NEAR);
  return (
    <div class="stages">
      <p class="stages-says" aria-live={moving ? 'off' : 'polite'}>
        {says}
      </p>
      <KeptButton
        class="view-key"
        does="stage-back"
        idle={before === undefined}
        onPress={() => goTo(before ?? fraction)}
      >
        {say('views.step-back')}
      </KeptButton>
      <KeptButton class="view-key" does="stage-on" idle={after === undefined} onPress={() => goTo(after ?? fraction)}>
        {say('views.step-on')}
      </KeptButton>
      {still ? null : (
        <button type="button" class="view-key" data-do="stage-run" onClick={run}>
          {say('views.move')}
        </button>
      )}
    </div>
  );
}
