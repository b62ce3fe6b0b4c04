import { nearestSpelling } from '../../drafting/spelling.ts';
import { type Key, type Message, message } from '../../words/message.ts';

/** What kind of thing a name was looked up as. */
export type What = Extract<Key, `what.${string}`>;

/** That nothing is called so, and the nearest known name, or else all there are. */
export function unknownName(what: What, name: string, known: Iterable<string>): Message {
  const names = [...known];
  const said = { said: message(what) };
  if (names.length === 0) return message('author.none', { what: said, name });
  const meant = nearestSpelling(name, names);
  if (meant !== null) return message('author.unknown-meant', { what: said, name, meant });
  return message('author.unknown', { what: said, name, known: names.join(', ') });
}
