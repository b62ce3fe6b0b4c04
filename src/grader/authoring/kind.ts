import type { ShapeKind } from '../../drafting/shape.ts';
import { type Message, message } from '../../words/message.ts';

/** Kinds of object as they stand in a sentence: "a point", "a line or a curve". */
export function eitherKind(kinds: readonly ShapeKind[]): Message {
  return kinds
    .map((kind): Message => message(`a.${kind}`))
    .reduce((one, other) => message('author.or', { one: { said: one }, other: { said: other } }));
}
