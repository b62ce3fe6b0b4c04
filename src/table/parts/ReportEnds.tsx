import type { VNode } from 'preact';
import type { Feedback } from '../../exchange/set.ts';
import type { Onward } from '../onward.ts';
import type { Say } from '../say.ts';

interface ReportEndsProps {
  readonly allRight: boolean;
  readonly feedback: Feedback;
  /** How often the draft may still be checked; null where nobody counts. */
  readonly left: number | null;
  /** Whether it is shown where things should be. */
  readonly shown: boolean;
  /** What comes next; null where nothing does. */
  readonly onward: Onward | null;
  readonly say: Say;
  readonly onShow: () => void;
  readonly onAgain: () => void;
}

/** Where to go from the marker's notes: on, where all is right; otherwise back to the draft first. */
export function ReportEnds(props: ReportEndsProps): VNode {
  return (
    <div class="report-ends">{props.allRight ? <EndsWhereRight {...props} /> : <EndsWhereWrong {...props} />}</div>
  );
}

function EndsWhereRight({ onward, say, onAgain }: ReportEndsProps): VNode {
  return (
    <>
      {onward ? (
        <a class="button button--first" data-do="onward" href={onward.href}>
          {say.message(onward.says)}
        </a>
      ) : null}
      <button type="button" class="button" data-do="again" onClick={onAgain}>
        {say('table.rub-out-notes')}
      </button>
    </>
  );
}

function EndsWhereWrong({ feedback, left, shown, say, onShow, onAgain }: ReportEndsProps): VNode {
  return (
    <>
      <button type="button" class="button button--first" data-do="again" onClick={onAgain}>
        {say(left === 0 ? 'table.back-to-draft' : 'table.again')}
      </button>
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
