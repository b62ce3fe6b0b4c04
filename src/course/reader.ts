import { type Key, message, type Needs, type Value } from '../words/message.ts';
import { type Reader, say } from '../words/say.ts';
import { unbroken } from '../words/unbroken.ts';
import type { Unit } from '../words/unit.ts';

/** The language the pages are built in. */
export const LANGUAGE = 'en';

/** The unit a page is built in; the reader's own choice is taken up in the browser. */
const BUILT_UNIT: Unit = 'cm';

export const builtReader: Reader = { language: LANGUAGE, unit: BUILT_UNIT };

/** A sentence of the interface, for a page as it is built. */
export function words<K extends Key>(
  key: K,
  ...values: [Needs<K>] extends [never] ? [] : [Readonly<Record<Needs<K>, Value>>]
): string {
  return unbroken(say(message(key, ...values), builtReader));
}
