import type { VNode } from 'preact';
import type { TargetMarks } from '../../../exchange/notes/noted-marks.ts';
import type { OwnMark } from '../../../exchange/notes/notes.ts';
import type { TargetReport } from '../../../grader/result.ts';
import { Said } from '../../../table/parts/Said.tsx';
import type { Say } from '../../../table/say.ts';
import { Marks } from './Marks.tsx';

interface TargetNoteProps {
  readonly report: TargetReport;
  /** Null where nothing is earned by this target. */
  readonly marks: TargetMarks | null;
  readonly say: Say;
  /** Gives the teacher's mark, or with null takes it back. */
  readonly onMark: (mark: OwnMark | null) => void;
}

/** What is said of one target, and its marks: the grader's and, where the teacher gave another, hers with the reason. */
export function TargetNote({ report, marks, say, onMark }: TargetNoteProps): VNode {
  const { target, status, verdict } = report;
  return (
    <div class="piece-note" data-status={status} data-target={target}>
      <h3>
        {say('table.label', { name: { named: target } })}{' '}
        <span class="piece-status">{say('verdict.word', { verdict })}</span>
      </h3>
      <Said report={report} say={say} />
      {marks === null ? null : <Marks marks={marks} say={say} onMark={onMark} />}
    </div>
  );
}
