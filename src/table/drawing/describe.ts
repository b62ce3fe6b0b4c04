import type { Name } from '../../drafting/step.ts';
import { type Message, message } from '../../words/message.ts';

/** What a drawing shows, in a sentence or two. */
export function sayDrawing(shown: readonly Name[], given: ReadonlySet<Name>): readonly Message[] {
  const block = shown.filter((name) => given.has(name));
  const draft = shown.filter((name) => !given.has(name));
  const says: Message[] = [];
  if (block.length > 0) says.push(message('table.shows-given', { names: { namedAll: block } }));
  if (draft.length > 0) says.push(message('table.shows-made', { names: { namedAll: draft } }));
  return says.length > 0 ? says : [message('table.shows-nothing')];
}
