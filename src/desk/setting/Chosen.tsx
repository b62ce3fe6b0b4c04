import type { VNode } from 'preact';
import { SET_MARKS, type SetExercise } from '../../exchange/set.ts';
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
        {sheet.exercises.map((one, index) => (
          <ChosenOne
            key={one.exercise}
            one={one}
            title={cards.get(one.exercise)?.title ?? one.exercise}
            isFirst={index === 0}
            isLast={index === sheet.exercises.length - 1}
            say={say}
            change={change}
          />
        ))}
      </ol>
      {sheet.exercises.length > 0 ? (
        <p class="desk-sum">{say('desk.marks-sum', { count: sheet.exercises.length, marks })}</p>
      ) : null}
    </section>
  );
}

interface ChosenOneProps extends Pick<ChosenProps, 'say' | 'change'> {
  readonly one: SetExercise;
  readonly title: string;
  readonly isFirst: boolean;
  readonly isLast: boolean;
}

/** One exercise of the set: what it is worth, and its place. */
function ChosenOne({ one: { exercise, marks }, title, isFirst, isLast, say, change }: ChosenOneProps): VNode {
  const moves: readonly { says: MoveProps['says']; off: boolean; to: Parameters<Change>[0] }[] = [
    { says: 'earlier', off: isFirst, to: (now) => moved(now, exercise, -1) },
    { says: 'later', off: isLast, to: (now) => moved(now, exercise, 1) },
    { says: 'leave-out', off: false, to: (now) => without(now, exercise) },
  ];
  return (
    <li data-exercise={exercise}>
      <span class="desk-chosen-title">{title}</span>
      <MarksField exercise={exercise} marks={marks} title={title} say={say} change={change} />
      <span class="desk-moves">
        {moves.map(({ says, off, to }) => (
          <Move key={says} says={says} title={title} say={say} off={off} onMove={() => change(to)} />
        ))}
      </span>
    </li>
  );
}

interface MarksFieldProps extends SetExercise, Pick<ChosenOneProps, 'title' | 'say' | 'change'> {}

/** What the exercise is worth in the set. */
function MarksField({ exercise, marks, title, say, change }: MarksFieldProps): VNode {
  return (
    <label class="desk-marks">
      <span class="unseen">{say('desk.marks', { title })}</span>
      <input
        type="number"
        min={1}
        max={SET_MARKS}
        value={marks}
        onInput={({ currentTarget }) => change((now) => worth(now, exercise, marksIn(currentTarget)))}
      />
      <span aria-hidden="true">{say('desk.marks-unit', { marks })}</span>
    </label>
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
