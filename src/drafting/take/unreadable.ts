import { message } from '../../words/message.ts';
import { wantedWords } from '../kinds.ts';
import { failed, type Outcome } from '../outcome.ts';
import type { Blank } from '../verbs.ts';

/** What stands in the blank is not of the sort it takes. */
export function unreadable(blank: Blank): Outcome<never> {
  return failed(null, message('problem.unreadable', { wanted: { said: wantedWords(blank) } }));
}
