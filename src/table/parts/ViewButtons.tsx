import type { VNode } from 'preact';
import type { AwakeSheet } from '../board/lay-board.ts';
import { fitView } from '../board/view.ts';
import type { Box } from '../drawing/box.ts';
import type { Say } from '../say.ts';

interface ViewButtonsProps {
  readonly board: AwakeSheet | null;
  readonly home: Box;
  readonly failed: boolean;
  readonly say: Say;
}

/** Closer, further, and the whole sheet. */
export function ViewButtons({ board, home, failed, say }: ViewButtonsProps): VNode {
  if (failed) return <p class="sheet-asleep">{say('table.asleep')}</p>;
  const asleep = board === null;
  return (
    <fieldset class="view-buttons" disabled={asleep}>
      <legend class="unseen">{say('table.view')}</legend>
      <button type="button" class="button" data-do="closer" onClick={() => board?.zoom(1.4, null)}>
        {say('table.zoom-in')}
      </button>
      <button type="button" class="button" data-do="further" onClick={() => board?.zoom(1 / 1.4, null)}>
        {say('table.zoom-out')}
      </button>
      <button type="button" class="button" data-do="fit" onClick={() => board?.show(fitView(home, board.size()))}>
        {say('table.fit')}
      </button>
    </fieldset>
  );
}
