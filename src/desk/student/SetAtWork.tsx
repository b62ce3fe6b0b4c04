import type { VNode } from 'preact';
import { useMemo } from 'preact/hooks';
import type { ProblemSet } from '../../exchange/set.ts';
import { type Say, sayFor } from '../../table/say.ts';
import { useReader } from '../../table/use-reader.ts';
import { spelled, spelledLines } from '../../words/unseen.ts';
import { setRules } from '../set-rules.ts';
import type { ExerciseCard } from '../setting/exercise-card.ts';
import './work.css';
import { momentText } from '../../words/moment.ts';
import { Ends } from './Ends.tsx';
import { Tasks } from './Tasks.tsx';
import { useWork, type Work } from './use-work.ts';

interface SetAtWorkProps {
  readonly cards: readonly ExerciseCard[];
  /** Where the exercises lie, from the page's own address. */
  readonly way: string;
  readonly language: string;
}

/** A problem set as a student works on it: what is to be done, how far it has come, and the hand-in. */
export function SetAtWork({ cards, way, language }: SetAtWorkProps): VNode {
  const reader = useReader(language);
  const say = useMemo(() => sayFor(reader), [reader]);
  const byId = useMemo(() => new Map(cards.map((card) => [card.id, card])), [cards]);
  const names = useMemo(() => cards.map(({ id }) => id), [cards]);
  const work = useWork(names);
  const { set } = work;
  // Nothing is built but the place for it: which set is open, only the browser knows.
  if (!work.awake) return <div class="work" />;
  return (
    <div class="work">
      {work.trial ? <p class="notice">{say('work.trial')}</p> : null}
      {work.trouble ? (
        <p class="trouble" role="alert">
          {say.message(work.trouble)}
        </p>
      ) : null}
      {set === null ? (
        <p>{say('work.none')}</p>
      ) : (
        <>
          <Head set={set} say={say} />
          <Who work={work} say={say} />
          <Tasks set={set} cards={byId} student={work.student} way={way} say={say} />
        </>
      )}
      <Ends work={work} names={names} say={say} />
    </div>
  );
}

function Head({ set, say }: { readonly set: ProblemSet; readonly say: Say }): VNode {
  const { language } = say.reader;
  const late = set.due !== null && new Date(set.due) < new Date();
  return (
    <header class="work-head">
      <h2>{spelled(set.title)}</h2>
      {set.note === '' ? null : <p class="work-note">{spelledLines(set.note)}</p>}
      {set.due === null ? null : (
        <p class="work-due">{say(late ? 'work.late' : 'work.due', { due: momentText(set.due, language) })}</p>
      )}
      <ul class="work-rules" aria-label={say('work.rules')}>
        {setRules(set).map((rule) => (
          <li key={say.message(rule)}>{say.message(rule)}</li>
        ))}
      </ul>
    </header>
  );
}

function Who({ work, say }: { readonly work: Work; readonly say: Say }): VNode {
  const { student, setStudent } = work;
  return (
    <div class="work-who">
      <label class="field">
        <span>{say('work.student')}</span>
        <input
          type="text"
          name="student"
          autocomplete="name"
          maxLength={200}
          value={student.student}
          onInput={({ currentTarget }) => setStudent({ ...student, student: currentTarget.value })}
        />
      </label>
      <label class="field">
        <span>{say('work.number')}</span>
        <input
          type="text"
          name="number"
          autocomplete="off"
          maxLength={40}
          value={student.number}
          onInput={({ currentTarget }) => setStudent({ ...student, number: currentTarget.value })}
        />
      </label>
    </div>
  );
}
