import papa from 'papaparse';
import { message } from '../../words/message.ts';
import { type Reader, say } from '../../words/say.ts';
import type { Gradebook } from './gradebook.ts';

/**
 * A gradebook as CSV (RFC 4180: lines end in CR LF, cells are quoted where they have to be): a line a student, a column an
 * exercise; exercises nobody handed in are empty. A text that a spreadsheet would take for a formula gets an apostrophe
 * before it. Marks are not rounded.
 */
export function gradebookCsv({ exercises, of, lines }: Gradebook, reader: Reader): string {
  const said = (key: 'student' | 'number' | 'sum' | 'of' | 'remarks'): string => say(message(`csv.${key}`), reader);
  const head = [said('student'), said('number'), ...exercises, said('sum'), said('of'), said('remarks')];
  const body = lines.map(({ student, number, entries, marks }) => [
    student,
    number,
    ...exercises.map((exercise) => entries.get(exercise)?.marks ?? ''),
    marks,
    of,
    [...entries.values()]
      .filter(({ remarks }) => remarks.length > 0)
      .map(({ exercise, remarks }) => {
        const all = remarks.map((remark) => say(message(`remark.${remark}`), reader)).join(', ');
        return `${exercise}: ${all}`;
      })
      .join('; '),
  ]);
  return `${papa.unparse([head, ...body], { newline: '\r\n', escapeFormulae: true })}\r\n`;
}
