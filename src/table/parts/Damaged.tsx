import type { VNode } from 'preact';
import { download } from '../download.ts';
import type { Say } from '../say.ts';

interface DamagedProps {
  readonly raw: string;
  readonly exercise: string;
  readonly say: Say;
  readonly onStart: () => void;
}

/** What was kept cannot be read: it is offered as it is, and one may start clean. Nothing is thrown away unasked. */
export function Damaged({ raw, exercise, say, onStart }: DamagedProps): VNode {
  return (
    <div class="notice" role="alert">
      <p>{say('table.damaged')}</p>
      <div class="files-ends">
        <button
          type="button"
          class="button"
          data-do="save-raw"
          onClick={() => download(`${exercise}.damaged.txt`, raw)}
        >
          {say('table.damaged-save')}
        </button>
        <button type="button" class="button button--first" data-do="start-clean" onClick={onStart}>
          {say('table.damaged-start')}
        </button>
      </div>
    </div>
  );
}
