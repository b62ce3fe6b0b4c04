import type { VNode } from 'preact';
import { gradeRow } from '../exchange/grade-row.ts';
import type { HandIn } from '../exchange/hand-in.ts';
import type { Grade } from '../grader/result.ts';
import type { Onward } from './onward.ts';
import { Report } from './parts/Report.tsx';
import type { SetInHand } from './set-in-hand.ts';
import type { TableInHand } from './use-table.ts';

interface TableReportProps {
  readonly table: TableInHand;
  readonly inSet: SetInHand | null;
  readonly onward: Onward | null;
}

/** The marker's notes on the draft, once it was marked. */
export function TableReport({ table, inSet, onward }: TableReportProps): VNode | null {
  const { marking, record, say } = table;
  if (!marking.marked) return null;
  const { grade, isNew } = marking.marked;
  return (
    <Report
      grade={grade}
      isNew={isNew}
      stale={table.stale}
      shown={marking.showsRight}
      feedback={marking.feedback}
      left={table.left}
      row={inSet ? undefined : rowOf(record.handIn(null), grade)}
      onward={onward}
      say={say}
      onShow={table.toggleRight}
      onRubOut={marking.rubOut}
    />
  );
}

function rowOf(handIn: HandIn, grade: Grade): string {
  const { checks, otherFigures } = gradeRow(handIn, grade);
  return JSON.stringify({ checks, otherFigures });
}
