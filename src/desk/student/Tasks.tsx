import type { VNode } from 'preact';
import type { ProblemSet } from '../../exchange/set.ts';
import { isOwn } from '../../exchange/set-order.ts';
import { type Student, studentKey } from '../../exchange/student.ts';
import { setMark } from '../../exchange/write-set.ts';
import type { Say } from '../../table/say.ts';
import { local } from '../../table/store/own-storage.ts';
import type { ExerciseCard } from '../setting/exercise-card.ts';
import { inSetHash } from './in-set.ts';
import { type Progress, progressOf } from './working-on.ts';

interface TasksProps {
  readonly set: ProblemSet;
  readonly cards: ReadonlyMap<string, ExerciseCard>;
  readonly student: Student;
  /** Where the exercises lie, from the page's own address. */
  readonly way: string;
  readonly say: Say;
}

/** The exercises of the set, each with how far it has come and the way to it. */
export function Tasks({ set, cards, student, way, say }: TasksProps): VNode {
  const mark = setMark(set);
  // Figures of one's own follow from the name: without one there is nobody to draft for.
  const waits = typeof set.figures === 'object' && 'each' in set.figures && studentKey(student) === '';
  const others = set.exercises.some(({ exercise }) => {
    const progress = progressOf(local, exercise, mark);
    return progress.state === 'begun' && !isOwn(set, progress.handIn.order.figure, student);
  });
  return (
    <section aria-labelledby="work-tasks">
      <h3 id="work-tasks">{say('work.exercises')}</h3>
      <p class="small work-waits">{waits ? say('work.who-first') : null}</p>
      {others ? <p class="trouble">{say('work.who-changed')}</p> : null}
      <ol class="work-tasks">
        {set.exercises.map(({ exercise, marks }) => (
          <Task
            key={exercise}
            exercise={exercise}
            title={cards.get(exercise)?.title ?? exercise}
            marks={marks}
            progress={progressOf(local, exercise, mark)}
            href={waits ? null : `${way}${exercise}/${inSetHash(mark.id, window.location.hash)}`}
            say={say}
          />
        ))}
      </ol>
    </section>
  );
}

interface TaskProps {
  readonly exercise: string;
  readonly title: string;
  readonly marks: number;
  readonly progress: Progress;
  /** Where it is done; null while it has to wait. */
  readonly href: string | null;
  readonly say: Say;
}

/** One exercise of the set. */
function Task({ exercise, title, marks, progress, href, say }: TaskProps): VNode {
  const does = progress.state === 'fresh' ? 'begin' : 'go-on';
  return (
    <li data-exercise={exercise} data-state={progress.state}>
      <span class="work-task-title">{title}</span>
      <span class="work-worth">{say('desk.worth', { marks })}</span>
      <span class="work-state">{stateWords(progress, say)}</span>
      {href === null ? (
        <button type="button" class="button" disabled>
          {say(`work.${does}`)}
        </button>
      ) : (
        <a class="button" href={href} aria-label={say(`work.${does}-what`, { title })}>
          {say(`work.${does}`)}
        </a>
      )}
    </li>
  );
}

function stateWords(progress: Progress, say: Say): string {
  if (progress.state !== 'begun') return say(`work.${progress.state}`);
  const { steps, checks } = progress.handIn;
  return say('work.begun', { steps: steps.length, checks });
}
