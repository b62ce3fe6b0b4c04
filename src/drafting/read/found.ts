import { type Message, message } from '../../words/message.ts';
import { isRecord } from '../record.ts';
import { shortened } from '../word-of.ts';

/** What was found in a file, as it stands in a sentence: “nothing”, “the number 5”, “a list”. */
export function foundWords(value: unknown): Message {
  if (value === undefined || value === null) return message('found.nothing');
  if (Array.isArray(value)) return message('found.list', { count: value.length });
  if (isRecord(value)) return message('found.object');
  if (typeof value === 'number') return message('found.number', { text: String(value) });
  return message('found.text', { text: shortened(String(value)) });
}
