import type { VNode } from 'preact';
import { useMemo } from 'preact/hooks';
import { gradeRow } from '../exchange/grade-row.ts';
import type { HandIn } from '../exchange/hand-in.ts';
import { usualWorn } from '../garment/collar/worn-plan.ts';
import type { Exercise } from '../grader/exercise.ts';
import type { Grade } from '../grader/result.ts';
import { BriefMeasures, BriefWords } from './parts/Brief.tsx';
import { Damaged } from './parts/Damaged.tsx';
import { Elsewhere } from './parts/Elsewhere.tsx';
import { Files } from './parts/Files.tsx';
import { Hints } from './parts/Hints.tsx';
import { InSet } from './parts/InSet.tsx';
import { Reminder } from './parts/Reminder.tsx';
import { Report } from './parts/Report.tsx';
import { Sentence } from './parts/Sentence.tsx';
import { Setup } from './parts/Setup.tsx';
import { Sheet } from './parts/Sheet.tsx';
import { Tools } from './parts/Tools.tsx';
import { Working } from './parts/Working.tsx';
import './table.css';
import type { SetInHand } from './set-in-hand.ts';
import { useKeptFocus } from './use-kept-focus.ts';
import { useTable } from './use-table.ts';
import { useViews } from './views/use-views.ts';
import { ViewPanel } from './views/ViewPanel.tsx';
import { ViewRow } from './views/ViewRow.tsx';

export interface TableProps {
  readonly exercise: Exercise;
  /** The problem set it is done for, whose conditions hold; its draft is kept apart. */
  readonly inSet?: SetInHand | null;
  /** Where the set lies, from the page's own address. */
  readonly wayBack?: string;
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
  const onFocusIn = useKeptFocus();
  const { exercise, inSet = null, wayBack = '' } = props;
  const { say, bench, marking, record, room } = table;
  const { sheet, light } = table.sheet;
  const { setting } = bench.about;
  const { measures } = room.givens;
  const looks = useViews(sheet, exercise.worn ?? usualWorn);
  const panel = `view-${exercise.id}`;
  const { brief, working, order } = useStill(table, exercise);
  return (
    <section class="table" aria-label={say('table.table')} onKeyDown={table.onKeyDown} onFocusIn={onFocusIn}>
      {record.keeping.state === 'damaged' ? (
        <Damaged raw={record.keeping.raw} exercise={exercise.id} say={say} onStart={record.keepMine} />
      ) : null}
      {record.keeping.state === 'elsewhere' ? (
        <Elsewhere say={say} onTake={record.takeOther} onKeep={record.keepMine} />
      ) : null}
      {brief}
      <div class="table-main">
        <div class="table-bench">
          <Tools inHand={bench.hand?.tool ?? null} say={say} onTake={table.take} />
          <Sheet
            {...table.sheet.sheetProps}
            bar={table.bar}
            below={
              <>
                <Reminder {...table.reminder} say={say} onCheck={table.checkNow} />
                <ViewRow {...looks} panel={panel} say={say} />
              </>
            }
          />
          {looks.open ? (
            <ViewPanel
              view={looks.open}
              sheet={sheet}
              plan={exercise.worn ?? usualWorn}
              strictness={setting.strictness}
              id={panel}
              say={say}
            />
          ) : null}
          <Sentence {...table.sheet.sentenceProps} onLight={light} />
        </div>
        {marking.marked ? (
          <Report
            grade={marking.marked.grade}
            stale={table.stale}
            shown={marking.showsRight}
            feedback={marking.feedback}
            row={inSet ? undefined : rowOf(record.handIn(null), marking.marked.grade)}
            say={say}
            onShow={table.toggleRight}
            onAgain={marking.rubOut}
          />
        ) : null}
        {working}
      </div>
      <div class="table-order">
        {order}
        {inSet?.set.hints === false ? null : (
          <Hints
            targets={exercise.targets}
            measures={measures}
            open={record.hints}
            say={say}
            onOpen={record.openHint}
          />
        )}
        {inSet ? (
          <InSet title={inSet.set.title} wayBack={wayBack} keeping={record.keeping} say={say} />
        ) : (
          <>
            <Setup
              exercise={exercise}
              setting={setting}
              figure={room.order.figure}
              say={say}
              onSetting={table.setSetting}
              freshFigure={table.freshFigure}
            />
            <Files {...table.files} />
          </>
        )}
      </div>
      <p class="unseen" role="status" aria-live="polite" data-spoken>
        {table.spoken}
      </p>
    </section>
  );
}

/** A move of the pointer changes the sheet and the sentence. What is long and stays as it is keeps its nodes, and is passed over. */
function useStill(
  { say, bench, dispatch, room, sheet: { sheet, shown, light } }: ReturnType<typeof useTable>,
  exercise: Exercise,
) {
  const { setting } = bench.about;
  const { measures } = room.givens;
  const brief = useMemo(
    () => <BriefWords exercise={exercise} setting={setting} measures={measures} say={say} />,
    [exercise, setting, measures, say],
  );
  const working = useMemo(
    () => (
      <Working bench={bench} room={room} sheet={sheet} shown={shown} say={say} dispatch={dispatch} onLight={light} />
    ),
    [bench, room, sheet, shown, say, dispatch, light],
  );
  const order = useMemo(
    () => <BriefMeasures exercise={exercise} setting={setting} sheet={sheet} measures={measures} say={say} />,
    [exercise, setting, sheet, measures, say],
  );
  return { brief, working, order };
}

function rowOf(handIn: HandIn, grade: Grade): string {
  const { checks, otherFigures } = gradeRow(handIn, grade);
  return JSON.stringify({ checks, otherFigures });
}
