import { nearestSpelling } from '../drafting/spelling.ts';
import { unknownName } from '../grader/reading/unknown.ts';
import { type Message, message } from '../words/message.ts';

/**
 * What to say of an exercise that a set or a hand-in names and this copy of the course does not have: the name that was
 * meant, or that somebody's own exercise is only where they put it.
 */
export function strangeExercise(name: string, known: readonly string[]): Message {
  if (nearestSpelling(name, known) !== null) return unknownName('what.exercise', name, known);
  return message('files.no-exercise', { name });
}
