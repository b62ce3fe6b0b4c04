import type { VNode } from 'preact';
import type { BookLine, Entry } from '../../../exchange/class/gradebook.ts';
import { remarksTold } from '../../../exchange/class/remarks-told.ts';
import type { Say } from '../../../table/say.ts';
import { momentText } from '../../../words/moment.ts';
import { spelled } from '../../../words/unseen.ts';
import { nameAlone } from '../student-name.ts';
import { tidyMarks } from '../tidy-marks.ts';
import './book-words.css';
import { gridRoles } from './grid-roles.ts';

interface BookRowProps {
  readonly line: BookLine;
  /** The whole class, to know in it whose figure a piece was drawn for. */
  readonly lines: readonly BookLine[];
  /** Which line of the table it is, counted from 1 with the heads. */
  readonly index: number;
  readonly exercises: readonly string[];
  /** Those of them that nobody was asked for. */
  readonly others: readonly string[];
  /** The column in which the keyboard stands; null where it stands in another line. */
  readonly standing: number | null;
  readonly say: Say;
  readonly onOpen: (student: string, exercise: string) => void;
}

/** A student's line of the gradebook. */
export function BookRow({ line, lines, index, exercises, others, standing, say, onOpen }: BookRowProps): VNode {
  const name = nameAlone(line, say);
  const stop = (col: number): 0 | -1 => (col === standing ? 0 : -1);
  return (
    <tr {...gridRoles.line} aria-rowindex={index} data-line={line.key}>
      <th {...gridRoles.name} tabIndex={stop(0)}>
        {name} <span class="book-number">{spelled(line.number)}</span>
        <Given line={line} say={say} />
        <Remarks line={line} lines={lines} say={say} />
      </th>
      {exercises.map((exercise, at) => {
        const entry = line.entries.get(exercise);
        return entry ? (
          <td {...gridRoles.cell} key={exercise}>
            <button
              type="button"
              class="book-open"
              tabIndex={stop(at + 1)}
              data-cell={`${line.key}/${exercise}`}
              data-by-hand={entry.grader !== undefined}
              title={byHand(entry, say)}
              aria-label={say('mark.open-what', { student: name, marks: marksSaid(entry, say) })}
              onClick={() => onOpen(line.key, exercise)}
            >
              {tidyMarks(entry.marks)}
            </button>
          </td>
        ) : (
          <td {...gridRoles.cell} key={exercise} class="book-none" tabIndex={stop(at + 1)}>
            {say(whyNone(line, exercise, others))}
          </td>
        );
      })}
      <td {...gridRoles.cell} class="book-sum" tabIndex={stop(exercises.length + 1)}>
        {tidyMarks(line.marks)}
      </td>
    </tr>
  );
}

/** Why there is no mark. */
function whyNone(
  { unread }: BookLine,
  exercise: string,
  others: BookRowProps['others'],
): 'mark.not-read' | 'mark.not-asked' | 'mark.none' {
  if (unread.some((one) => one.exercise === exercise)) return 'mark.not-read';
  return others.includes(exercise) ? 'mark.not-asked' : 'mark.none';
}

/** Where the teacher's marks count: what the grader gave. */
function byHand({ grader }: Entry, say: Say): string | undefined {
  return grader === undefined ? undefined : say('mark.by-hand', { grader: tidyMarks(grader) });
}

function marksSaid(entry: Entry, say: Say): string {
  return [String(tidyMarks(entry.marks)), byHand(entry, say)].filter((words) => words !== undefined).join(', ');
}

/** The time that the teacher gave the student. */
function Given({ line: { until }, say }: Pick<BookRowProps, 'line' | 'say'>): VNode | null {
  if (until === null) return null;
  return <span class="book-given">{say('mark.until', { until: momentText(until, say.reader.language) })}</span>;
}

/** What is not as the set has it, each remark once, and what could not be read. */
function Remarks({ line, lines, say }: Pick<BookRowProps, 'line' | 'lines' | 'say'>): VNode | null {
  const { entries, unread, listed } = line;
  const told = [...entries.values()].flatMap((entry) => remarksTold(entry, lines));
  const lost = unread.length === 0 ? [] : [say('mark.unread-here', { count: unread.length })];
  const by = listed === null ? [] : [say(`mark.${listed}`)];
  const remarks = [...by, ...new Set(told.map(say.message)), ...lost];
  if (remarks.length === 0) return null;
  return <span class="book-remarks">{spelled(remarks.join('; '))}</span>;
}
