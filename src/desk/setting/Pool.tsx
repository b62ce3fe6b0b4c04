import type { VNode } from 'preact';
import type { Say } from '../../table/say.ts';
import type { LessonCards } from './exercise-card.ts';
import { type Change, type Sheet, toggled } from './sheet.ts';

interface PoolProps {
  readonly sheet: Sheet;
  readonly lessons: readonly LessonCards[];
  readonly say: Say;
  readonly change: Change;
}

/** Every exercise of the course, to be taken into the set. */
export function Pool({ sheet, lessons, say, change }: PoolProps): VNode {
  const taken = new Set(sheet.exercises.map(({ exercise }) => exercise));
  return (
    <section class="desk-pool" aria-labelledby="desk-pool">
      <h2 id="desk-pool">{say('desk.pool')}</h2>
      {lessons.map(({ lesson, title, exercises }) => (
        <fieldset key={lesson} class="desk-lesson">
          <legend>{title}</legend>
          {exercises.map((card) => (
            <div key={card.id} class="desk-offer">
              <label class="desk-tick">
                <input
                  type="checkbox"
                  name={card.id}
                  checked={taken.has(card.id)}
                  onChange={() => change((now) => toggled(now, { exercise: card.id, marks: card.marks }))}
                />{' '}
                <span>
                  {card.title} <span class="desk-note">{say('desk.worth', { marks: card.marks })}</span>
                </span>
              </label>
              {/* In a tab of its own: the set being made stays where it is. */}
              <a
                href={`../../exercises/${card.id}/`}
                target="_blank"
                rel="noopener"
                aria-label={say('desk.look-what', { title: card.title })}
              >
                {say('desk.look')}
              </a>
            </div>
          ))}
        </fieldset>
      ))}
    </section>
  );
}
