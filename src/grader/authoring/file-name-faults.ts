import { isName } from '../../drafting/name.ts';
import { message } from '../../words/message.ts';
import type { Fault } from '../reading/fault.ts';
import { isStrange } from '../reading/strange-keys.ts';

/** A file name that could not be an exercise's name in addresses, sets and hand-ins, with the nearest that could. */
export function fileNameFaults(id: string): readonly Fault[] {
  if (isStrange(id)) return [{ at: [], message: message('author.name-strange', { name: id }) }];
  return isName(id) ? [] : [{ at: [], message: message('author.file-name', { name: id, meant: asName(id) }) }];
}

/** Any words as a name: lower-case, joined by hyphens; words of another alphabet alone come to `my-exercise`. */
export function asName(words: string): string {
  const plain = words.normalize('NFKD').replace(/\p{M}/gu, '').toLowerCase();
  const name = plain.replace(/[^a-z0-9]+/g, '-').replace(/^[-0-9]+|-+$/g, '');
  return isName(name) && !isStrange(name) ? name : 'my-exercise';
}
