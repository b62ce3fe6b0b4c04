import type { VNode } from 'preact';
import type { Exercise } from '../grader/exercise.ts';
import { BriefMeasures, BriefWords } from './parts/Brief.tsx';
import { Damaged } from './parts/Damaged.tsx';
import { Files } from './parts/Files.tsx';
import { Hints } from './parts/Hints.tsx';
import { Report } from './parts/Report.tsx';
import { Sentence } from './parts/Sentence.tsx';
import { Setup } from './parts/Setup.tsx';
import { Sheet } from './parts/Sheet.tsx';
import { Tools } from './parts/Tools.tsx';
import { Working } from './parts/Working.tsx';
import './table.css';
import { useTable } from './use-table.ts';

export interface TableProps {
  readonly exercise: Exercise;
  /** Name of the problem set it is done for; its draft is kept apart. */
  readonly set?: string | null;
  /** Decides the figure of an exercise that samples one. */
  readonly seed?: string;
  readonly language?: string;
}

/**
 * The drafting table of one exercise. Built, it is the sheet as SVG with its order; awake, everything on it works.
 * All state lives in `useTable`; the parts only show it and say what was done.
 */
export function Table(props: TableProps): VNode {
  const table = useTable(props);
  const { say, bench, sheet, setting, dispatch } = table;
  const { measures } = table.room.givens;
  return (
    <section class="table" aria-label={say('table.table')} data-awake={table.awake} onKeyDown={table.onKeyDown}>
      {table.keeping.state === 'damaged' ? (
        <Damaged raw={table.keeping.raw} exercise={props.exercise.id} say={say} onStart={table.startClean} />
      ) : null}
      <BriefWords exercise={props.exercise} setting={setting} measures={measures} say={say} />
      <div class="table-main">
      <div class="table-bench">
        <Tools inHand={bench.hand?.tool ?? null} say={say} onTake={table.take} />
        <Sheet {...table.sheetProps} bar={table.bar} />
        <Sentence {...table.sentenceProps} />
      </div>
      {table.marked ? (
        <Report
          grade={table.marked.grade}
          stale={table.stale}
          shown={table.showsRight}
          say={say}
          onShow={table.toggleRight}
          onAgain={table.rubOut}
        />
      ) : null}
      <Working bench={bench} room={table.room} sheet={sheet} shown={table.shown} say={say} dispatch={dispatch} onLight={table.light} />
      </div>
      <div class="table-order">
        <BriefMeasures exercise={props.exercise} sheet={sheet} measures={measures} say={say} />
        <Hints targets={props.exercise.targets} measures={measures} open={table.hints} say={say} onOpen={table.openHint} />
        <Setup exercise={props.exercise} setting={setting} figure={table.figure} say={say} onSetting={table.setSetting} freshFigure={table.freshFigure} />
        <Files {...table.filesProps} />
      </div>
      <p class="unseen" role="status" aria-live="polite">
        {table.spoken}
      </p>
    </section>
  );
}
