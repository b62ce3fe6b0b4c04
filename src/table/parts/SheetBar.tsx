import type { VNode } from 'preact';
import type { AwakeSheet } from '../board/awake-sheet.ts';
import { fitView } from '../board/view.ts';
import type { Box } from '../drawing/box.ts';
import type { Say } from '../say.ts';
import { KeptButton } from './KeptButton.tsx';

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
export function SheetBar(props: SheetBarProps): VNode {
  const { failed, canUndo, canRedo, left, say, onUndo, onRedo, onCheck } = props;
  return (
    <div class="sheet-bar">
      {failed ? <p class="sheet-asleep">{say('table.asleep')}</p> : null}
      <KeptButton class="button" does="undo" idle={!canUndo} onPress={onUndo}>
        {say('table.undo')}
      </KeptButton>
      <KeptButton class="button" does="redo" idle={!canRedo} onPress={onRedo}>
        {say('table.redo')}
      </KeptButton>
      <span class="sheet-bar-gap" />
      <Nearness {...props} />
      <span class="sheet-bar-gap" />
      <KeptButton class="button button--first" does="check" idle={left === 0} onPress={onCheck}>
        {say('table.check')}
      </KeptButton>
      {left === null ? null : <p class="sheet-bar-left">{say('table.checks-left', { left })}</p>}
    </div>
  );
}

/** Nearer, further, and all of it: while the board is asleep, none of them. */
function Nearness({ board, home, say }: Pick<SheetBarProps, 'board' | 'home' | 'say'>): VNode {
  const ways = [
    { does: 'closer', says: say('table.zoom-in'), act: (awake: AwakeSheet) => awake.zoom(CLOSER, null) },
    { does: 'further', says: say('table.zoom-out'), act: (awake: AwakeSheet) => awake.zoom(1 / CLOSER, null) },
    { does: 'fit', says: say('table.fit'), act: (awake: AwakeSheet) => awake.show(fitView(home, awake.size())) },
  ];
  return (
    <>
      {ways.map(({ does, says, act }) => (
        <button
          key={does}
          type="button"
          class="button"
          data-do={does}
          disabled={board === null}
          onClick={() => board && act(board)}
        >
          {says}
        </button>
      ))}
    </>
  );
}
