import type { VNode } from 'preact';
import { SET_MARKS } from '../../exchange/set.ts';
import type { Say } from '../../table/say.ts';
import type { ExerciseCard } from './exercise-card.ts';
import { type Change, moved, type Sheet, without, worth } from './sheet.ts';

interface ChosenProps {
  readonly sheet: Sheet;
  readonly cards: ReadonlyMap<string, ExerciseCard>;
  readonly say: Say;
  readonly change: Change;
}

/** The exercises of the set in their order, each with its marks. */
export function Chosen({ sheet, cards, say, change }: ChosenProps): VNode {
  const marks = sheet.exercises.reduce((sum, one) => sum + one.marks, 0);
  return (
    <section aria-labelledby="desk-chosen">
      <h2 id="desk-chosen">{say('desk.chosen')}</h2>
      {sheet.exercises.length === 0 ? <p class="desk-note">{say('desk.chosen-none')}</p> : null}
      <ol class="desk-chosen">
        {sheet.exercises.map((one, index) => {
          const title = cards.get(one.exercise)?.title ?? one.exercise;
          return (
            <li key={one.exercise} data-exercise={one.exercise}>
              <span class="desk-chosen-title">{title}</span>
              <label class="desk-marks">
                <span class="unseen">{say('desk.marks', { title })}</span>
                <input
                  type="number"
                  min={1}
                  max={SET_MARKS}
                  value={one.marks}
                  onInput={({ currentTarget }) => change((now) => worth(now, one.exercise, marksIn(currentTarget)))}
                />
                <span aria-hidden="true">{say('desk.marks-unit', { marks: one.marks })}</span>
              </label>
              <span class="desk-moves">
                <Move
                  says="earlier"
                  title={title}
                  say={say}
                  off={index === 0}
                  onMove={() => change((now) => moved(now, one.exercise, -1))}
                />
                <Move
                  says="later"
                  title={title}
                  say={say}
                  off={index === sheet.exercises.length - 1}
                  onMove={() => change((now) => moved(now, one.exercise, 1))}
                />
                <Move
                  says="leave-out"
                  title={title}
                  say={say}
                  off={false}
                  onMove={() => change((now) => without(now, one.exercise))}
                />
              </span>
            </li>
          );
        })}
      </ol>
      {sheet.exercises.length > 0 ? (
        <p class="desk-sum">{say('desk.marks-sum', { count: sheet.exercises.length, marks })}</p>
      ) : null}
    </section>
  );
}

interface MoveProps {
  readonly says: 'earlier' | 'later' | 'leave-out';
  readonly title: string;
  readonly say: Say;
  readonly off: boolean;
  readonly onMove: () => void;
}

function Move({ says, title, say, off, onMove }: MoveProps): VNode {
  return (
    <button
      type="button"
      class="button button--quiet"
      disabled={off}
      aria-label={say(`desk.${says}-what`, { title })}
      onClick={onMove}
    >
      {say(`desk.${says}`)}
    </button>
  );
}

function marksIn({ valueAsNumber }: HTMLInputElement): number {
  return Number.isNaN(valueAsNumber) ? 1 : Math.min(SET_MARKS, Math.max(1, Math.round(valueAsNumber)));
}
