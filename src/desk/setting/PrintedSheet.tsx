import type { VNode } from 'preact';
import { fileNameOf } from '../../exchange/file-name.ts';
import type { Say } from '../../table/say.ts';
import { momentText } from '../../words/moment.ts';
import { spelled, spelledLines } from '../../words/unseen.ts';
import { setRules } from '../set-rules.ts';
import type { ExerciseCard } from './exercise-card.ts';
import type { Sheet } from './sheet.ts';

interface PrintedSheetProps {
  readonly sheet: Sheet;
  readonly cards: ReadonlyMap<string, ExerciseCard>;
  /** The whole address of the set; null where it is too long to be one. */
  readonly address: string | null;
  readonly say: Say;
}

/** The set as it goes on paper: on a screen it is not shown. */
export function PrintedSheet({ sheet, cards, address, say }: PrintedSheetProps): VNode {
  return (
    <section class="desk-printed" aria-hidden="true">
      <h1>{spelled(sheet.title)}</h1>
      <p class="desk-printed-who">
        <span>{say('desk.print-name')}</span> <span>{say('desk.print-number')}</span>
      </p>
      {sheet.due === null ? null : <p>{say('desk.print-due', { due: momentText(sheet.due, say.reader.language) })}</p>}
      <p class="desk-printed-note">{spelledLines(sheet.note)}</p>
      <ol>
        {sheet.exercises.map(({ exercise, marks }) => (
          <li key={exercise}>
            <span>{cards.get(exercise)?.title ?? exercise}</span> <span>{say('desk.worth', { marks })}</span>
          </li>
        ))}
      </ol>
      <ul>
        {setRules(sheet).map((rule) => (
          <li key={say.message(rule)}>{say.message(rule)}</li>
        ))}
      </ul>
      {address === null ? null : (
        // Nobody types a link of hundreds of letters from paper: the page and the file are said, and a sheet printed as a PDF can be pressed.
        <p class="desk-printed-link">
          {say('desk.print-open', { file: fileNameOf([sheet.title], 'set.json') })}{' '}
          <a href={address}>{address.split('#')[0]}</a>
        </p>
      )}
    </section>
  );
}
