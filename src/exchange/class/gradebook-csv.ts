import papa from 'papaparse';
import { message } from '../../words/message.ts';
import { momentText } from '../../words/moment.ts';
import { type Reader, say } from '../../words/say.ts';
import type { BookLine, Entry, Gradebook } from './gradebook.ts';
import { remarksTold } from './remarks-told.ts';

/** How a formula begins, also in the wide letters of another keyboard. The library's own pattern lets one with a line end in it pass. */
const FORMULA = /^[=+\-@\t\r\n＝＋－＠]/;

/**
 * With this mark before it a spreadsheet knows a file for UTF-8 (RFC 3629, section 6, calls it a signature). Without it some take
 * every file for the encoding of their own machine, and write rubbish for the letters beyond the plain ones.
 */
export const UTF8_MARK = '\uFEFF';

/**
 * A gradebook as CSV (RFC 4180: lines end in CR LF, cells are quoted where they have to be): a line a student, a column an
 * exercise; exercises nobody handed in are empty. A text that a spreadsheet would take for a formula gets an apostrophe
 * before it. Marks are not rounded. Where a teacher changed any, a last column says what the grader gave; otherwise there is
 * no such column.
 */
export function gradebookCsv({ exercises, of, lines }: Gradebook, reader: Reader): string {
  const said = (key: 'student' | 'number' | 'sum' | 'of' | 'remarks' | 'by-hand'): string =>
    say(message(`csv.${key}`), reader);
  const changed = lines.some(({ entries }) => [...entries.values()].some(({ grader }) => grader !== undefined));
  const head = [said('student'), said('number'), ...exercises, said('sum'), said('of'), said('remarks')];
  const body = lines.map((line) => [
    line.student,
    line.number,
    ...exercises.map((exercise) => line.entries.get(exercise)?.marks ?? ''),
    line.marks,
    of,
    remarked(line, lines, reader),
    ...(changed ? [byHand([...line.entries.values()], reader)] : []),
  ]);
  const heads = changed ? [...head, said('by-hand')] : head;
  return `${papa.unparse([heads, ...body], { newline: '\r\n', escapeFormulae: FORMULA })}\r\n`;
}

/** The time given to the student, what is not as the set has it, exercise by exercise, and what could not be read. */
function remarked({ entries, unread, listed, until }: BookLine, lines: readonly BookLine[], reader: Reader): string {
  const remarks = [...entries.values()]
    .filter((entry) => entry.remarks.length > 0)
    .map((entry) => {
      const all = remarksTold(entry, lines).map((remark) => say(remark, reader));
      return `${entry.exercise}: ${all.join(', ')}`;
    });
  const lost = unread.map(({ exercise }) =>
    say(exercise === null ? message('csv.unread') : message('csv.unread-of', { exercise }), reader),
  );
  const by = listed === null ? [] : [say(message(`mark.${listed}`), reader)];
  const given =
    until === null ? [] : [say(message('mark.until', { until: momentText(until, reader.language) }), reader)];
  return [...by, ...given, ...remarks, ...new Set(lost)].join('; ');
}

/** What the grader gave where a teacher's marks count. */
function byHand(entries: readonly Entry[], reader: Reader): string {
  return entries
    .flatMap(({ exercise, grader }) =>
      grader === undefined ? [] : [say(message('csv.grader-gave', { exercise, marks: String(grader) }), reader)],
    )
    .join('; ');
}
