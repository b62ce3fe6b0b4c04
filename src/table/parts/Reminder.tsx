import type { VNode } from 'preact';
import type { Say } from '../say.ts';
import type { ReminderOnTable } from '../use-reminder.ts';

interface ReminderProps extends Pick<ReminderOnTable, 'targets' | 'drop'> {
  readonly say: Say;
  readonly onCheck: () => void;
}

/** Before a draft is checked: what is not pointed out as an answer yet. */
export function Reminder({ targets, drop, say, onCheck }: ReminderProps): VNode | null {
  if (targets.length === 0) return null;
  return (
    <div class="notice reminder">
      <p>{say('table.unanswered', { targets: { namedAll: targets }, count: targets.length })}</p>
      <p class="ends">
        <button
          type="button"
          class="button button--first"
          data-do="point-out"
          onClick={(event) => {
            toLoose(event.currentTarget.closest('.table'));
            drop();
          }}
        >
          {say('table.point-out')}
        </button>
        <button type="button" class="button" data-do="check-anyway" onClick={onCheck}>
          {say('table.check-anyway')}
        </button>
      </p>
    </div>
  );
}

/** To the last step of the working that may answer something and does not. */
function toLoose(table: Element | null): void {
  const choices = [...(table?.querySelectorAll<HTMLSelectElement>('.step-answers select') ?? [])];
  const loose = choices.findLast(({ value }) => value === '');
  loose?.scrollIntoView({ block: 'center' });
  loose?.focus();
}
