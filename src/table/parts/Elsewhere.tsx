import type { VNode } from 'preact';
import type { Say } from '../say.ts';

interface ElsewhereProps {
  readonly say: Say;
  readonly onTake: () => void;
  readonly onKeep: () => void;
}

/** Another tab works on the same draft: the learner says which of the two is kept. */
export function Elsewhere({ say, onTake, onKeep }: ElsewhereProps): VNode {
  return (
    <div class="notice notice--here" role="alert">
      <p>{say('table.elsewhere')}</p>
      <div class="files-ends">
        <button type="button" class="button button--first" data-do="take-other" onClick={onTake}>
          {say('table.elsewhere-take')}
        </button>
        <button type="button" class="button" data-do="keep-mine" onClick={onKeep}>
          {say('table.elsewhere-keep')}
        </button>
      </div>
    </div>
  );
}
