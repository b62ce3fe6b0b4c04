import { type Key, type Message, message, type Needs, type Value } from '../words/message.ts';
import { type Reader, saySentence, say as sayTo } from '../words/say.ts';
import { unbroken } from '../words/unbroken.ts';

/** Says a sentence of the catalogue to the reader at this table; no line ends inside a length of it. */
export interface Say {
  <K extends Key>(key: K, ...values: [Needs<K>] extends [never] ? [] : [Readonly<Record<Needs<K>, Value>>]): string;
  readonly reader: Reader;
  readonly message: (said: Message) => string;
  /** A message that stands as a sentence of its own, and begins with a capital. */
  readonly sentence: (said: Message) => string;
}

export function sayFor(reader: Reader): Say {
  const say = <K extends Key>(
    key: K,
    ...values: [Needs<K>] extends [never] ? [] : [Readonly<Record<Needs<K>, Value>>]
  ) => unbroken(sayTo(message(key, ...values), reader));
  return Object.assign(say, {
    reader,
    message: (said: Message) => unbroken(sayTo(said, reader)),
    sentence: (said: Message) => unbroken(saySentence(said, reader)),
  });
}
