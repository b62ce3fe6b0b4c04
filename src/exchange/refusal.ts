import { type Fault, placeText } from '../grader/reading/fault.ts';
import { type Message, message } from '../words/message.ts';

/** Why a file was refused, in one sentence or two: the first thing that does not fit and where, and how much more there is. */
export function refusalOf(faults: readonly Fault[]): Message {
  const [first] = faults;
  if (first === undefined) return message('files.not-json');
  const said =
    first.at.length === 0
      ? first.message
      : message('files.at', { place: placeText(first.at), said: { said: first.message } });
  return faults.length === 1 ? said : message('files.more', { said: { said }, more: faults.length - 1 });
}
