import type { VNode } from 'preact';
import type { AwakeSheet } from '../board/lay-board.ts';
import { fitView } from '../board/view.ts';
import type { Box } from '../drawing/box.ts';
import type { Say } from '../say.ts';

export interface SheetBarProps {
  readonly board: AwakeSheet | null;
  readonly home: Box;
  readonly failed: boolean;
  readonly canUndo: boolean;
  readonly canRedo: boolean;
  /** How often the draft may be checked yet; null for as often as one likes. */
  readonly left: number | null;
  readonly say: Say;
  readonly onUndo: () => void;
  readonly onRedo: () => void;
  readonly onCheck: () => void;
}

const CLOSER = 1.4;

/** Under the sheet: back and forth, nearer and further, and having the draft marked. */
export function SheetBar({
  board,
  home,
  failed,
  canUndo,
  canRedo,
  left,
  say,
  onUndo,
  onRedo,
  onCheck,
}: SheetBarProps): VNode {
  const asleep = board === null;
  return (
    <div class="sheet-bar">
      {failed ? <p class="sheet-asleep">{say('table.asleep')}</p> : null}
      <button type="button" class="button" data-do="undo" disabled={!canUndo} onClick={onUndo}>
        {say('table.undo')}
      </button>
      <button type="button" class="button" data-do="redo" disabled={!canRedo} onClick={onRedo}>
        {say('table.redo')}
      </button>
      <span class="sheet-bar-gap" />
      <button type="button" class="button" data-do="closer" disabled={asleep} onClick={() => board?.zoom(CLOSER, null)}>
        {say('table.zoom-in')}
      </button>
      <button
        type="button"
        class="button"
        data-do="further"
        disabled={asleep}
        onClick={() => board?.zoom(1 / CLOSER, null)}
      >
        {say('table.zoom-out')}
      </button>
      <button
        type="button"
        class="button"
        data-do="fit"
        disabled={asleep}
        onClick={() => board?.show(fitView(home, board.size()))}
      >
        {say('table.fit')}
      </button>
      <span class="sheet-bar-gap" />
      <button type="button" class="button button--first" data-do="check" disabled={left === 0} onClick={onCheck}>
        {say('table.check')}
      </button>
      {left === null ? null : <p class="sheet-bar-left">{say('table.checks-left', { left })}</p>}
    </div>
  );
}
