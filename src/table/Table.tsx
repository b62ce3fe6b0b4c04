import type { VNode } from 'preact';
import { useMemo } from 'preact/hooks';
import type { Exercise } from '../grader/exercise.ts';
import { BriefMeasures, BriefWords } from './parts/Brief.tsx';
import { Damaged } from './parts/Damaged.tsx';
import { Elsewhere } from './parts/Elsewhere.tsx';
import { Working } from './parts/Working.tsx';
import './table.css';
import { TableAids } from './TableAids.tsx';
import { TableBench } from './TableBench.tsx';
import { TableReport } from './TableReport.tsx';
import type { TableProps } from './table-props.ts';
import { useLast } from './use-calm.ts';
import { useKeptFocus } from './use-kept-focus.ts';
import { type TableInHand, useTable } from './use-table.ts';

/**
 * The drafting table of one exercise. Built, it is the sheet as SVG with its order; awake, everything on it works.
 * All state lives in `useTable`; the parts only show it and say what was done. While something is dragged on the sheet, what
 * lies about it waits for a calm moment.
 */
export function Table(props: TableProps): VNode {
  const table = useTable(props);
  const onFocusIn = useKeptFocus();
  const { exercise, inSet = null, wayBack = '', onward = null } = props;
  const { say, record } = table;
  const calm = useLast(table, table.moving);
  const { brief, working, order } = useStill(calm, exercise);
  // Notes that are there again as the page wakes come after what stands there already, which then does not move.
  const isRecalled = table.marking.marked?.isNew === false;
  const report = useMemo(
    () => <TableReport key="report" table={calm} inSet={inSet} onward={onward} />,
    [calm, inSet, onward],
  );
  const aids = useMemo(
    () => <TableAids table={calm} exercise={exercise} inSet={inSet} wayBack={wayBack} />,
    [calm, exercise, inSet, wayBack],
  );
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
        <TableBench table={table} calm={calm} exercise={exercise} />
        {isRecalled ? [working, report] : [report, working]}
      </div>
      <div class="table-order">
        {order}
        {aids}
      </div>
      <p class="unseen" role="status" aria-live="polite" data-spoken>
        {table.spoken}
      </p>
    </section>
  );
}

/** What is long, and need not be drawn again with each change of the table: it keeps its nodes and is passed over. */
function useStill({ say, bench, dispatch, room, sheet: { sheet, shown, light } }: TableInHand, exercise: Exercise) {
  const { setting } = bench.about;
  const { measures } = room.givens;
  const brief = useMemo(
    () => <BriefWords exercise={exercise} setting={setting} measures={measures} say={say} />,
    [exercise, setting, measures, say],
  );
  const working = useMemo(
    () => (
      <Working
        key="working"
        bench={bench}
        room={room}
        sheet={sheet}
        shown={shown}
        say={say}
        dispatch={dispatch}
        onLight={light}
      />
    ),
    [bench, room, sheet, shown, say, dispatch, light],
  );
  const order = useMemo(
    () => <BriefMeasures exercise={exercise} setting={setting} sheet={sheet} measures={measures} say={say} />,
    [exercise, setting, sheet, measures, say],
  );
  return { brief, working, order };
}
