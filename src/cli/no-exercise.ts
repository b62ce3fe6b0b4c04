import path from 'node:path';
import { asName } from '../grader/authoring/file-name-faults.ts';
import { unknownName } from '../grader/reading/unknown.ts';
import { type Message, message } from '../words/message.ts';

/**
 * What to say of an exercise that is not there: the one that was meant, where it was asked for by its file or title; the
 * file of that name that is not read, because it does not end as an exercise does; otherwise the names there are.
 */
export function noExercise(asked: string, names: readonly string[], files: readonly string[]): Message {
  const meant = asName(path.basename(asked).replace(/\.ya?ml$/i, ''));
  if (names.includes(meant)) {
    return message('author.unknown-meant', { what: { said: message('what.exercise') }, name: asked, meant });
  }
  const stray = files.find((file) => !file.endsWith('.yaml') && asName(file.replace(/\..*$/, '')) === meant);
  if (stray !== undefined) return message('author.file-ending', { file: stray, meant });
  return unknownName('what.exercise', asked, names);
}
