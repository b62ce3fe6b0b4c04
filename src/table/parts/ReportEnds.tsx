import type { VNode } from 'preact';
import type { Name } from '../../drafting/step.ts';
import type { Feedback } from '../../exchange/set.ts';
import type { Onward } from '../onward.ts';
import type { Say } from '../say.ts';
import { toCheck, toStepOf } from './to-draft.ts';

interface ReportEndsProps {
  /** What is not right yet, in the order of the notes. */
  readonly wrong: readonly Name[];
  readonly feedback: Feedback;
  /** How often the draft may still be checked; null where nobody counts. */
  readonly left: number | null;
  /** Whether it is shown where things should be. */
  readonly shown: boolean;
  /** What comes next; null where nothing does. */
  readonly onward: Onward | null;
  readonly say: Say;
  readonly onShow: () => void;
  readonly onRubOut: () => void;
}

/** Where to go from the marker's notes: on, where all is right; otherwise back to the draft first. */
export function ReportEnds(props: ReportEndsProps): VNode {
  return (
    <div class="report-ends">
      {props.wrong.length === 0 ? <EndsWhereRight {...props} /> : <EndsWhereWrong {...props} />}
    </div>
  );
}

function EndsWhereRight({ onward, say, onRubOut }: ReportEndsProps): VNode {
  return (
    <>
      {onward ? (
        <a class="button button--first" data-do="onward" href={onward.href}>
          {say.message(onward.says)}
        </a>
      ) : null}
      <RubOut say={say} onRubOut={onRubOut} />
    </>
  );
}

/** The notes stay while one mends what they are about. */
function EndsWhereWrong({ wrong, feedback, left, shown, say, onShow, onRubOut }: ReportEndsProps): VNode {
  return (
    <>
      <button
        type="button"
        class="button button--first"
        data-do="mend"
        onClick={({ currentTarget }) => toStepOf(wrong, currentTarget.closest('.table'))}
      >
        {say(left === 0 ? 'table.back-to-draft' : 'table.mend')}
      </button>
      <RubOut say={say} onRubOut={onRubOut} />
      {feedback === 'place' ? (
        <>
          <button type="button" class="button" data-do="show-right" aria-pressed={shown} onClick={onShow}>
            {shown ? say('table.hide-right') : say('table.show-right')}
          </button>
          <p class="report-note">{say('table.show-right-note')}</p>
        </>
      ) : null}
    </>
  );
}

function RubOut({ say, onRubOut }: Pick<ReportEndsProps, 'say' | 'onRubOut'>): VNode {
  return (
    <button
      type="button"
      class="button"
      data-do="rub-out"
      onClick={({ currentTarget }) => {
        toCheck(currentTarget.closest('.table'));
        onRubOut();
      }}
    >
      {say('table.rub-out-notes')}
    </button>
  );
}
