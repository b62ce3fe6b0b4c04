import { type Message, message } from '../words/message.ts';
import type { ShapeKind } from './shape.ts';
import type { Blank } from './verbs.ts';

/** Kinds of object as they stand in a sentence: "a point", "a line or a curve". */
export function kindWords(kinds: readonly ShapeKind[]): Message {
  const [only] = kinds;
  if (kinds.length === 1 && only) return message(`a.${only}`);
  return kinds.includes('point') ? message('a.drawn') : message('a.line-or-curve');
}

/** What a blank takes, as it stands in a sentence. */
export function wantedWords(blank: Blank): Message {
  if (blank.takes === 'object') return kindWords(blank.kinds);
  if (blank.takes === 'objects') return message('wanted.points');
  return message(`wanted.${blank.takes}`);
}
