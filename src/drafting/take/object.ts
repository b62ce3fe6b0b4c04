import { type Message, message } from '../../words/message.ts';
import { kindWords } from '../kinds.ts';
import { failed, made, type Outcome } from '../outcome.ts';
import type { Scope } from '../scope.ts';
import type { Shape, ShapeKind } from '../shape.ts';
import { nearestSpelling } from '../spelling.ts';
import type { Name } from '../step.ts';
import { wordOf } from '../word-of.ts';

/** The object of this name, if it is one of these kinds. */
export function takeObject<K extends ShapeKind>(
  value: unknown,
  kinds: readonly K[],
  scope: Scope,
): Outcome<Extract<Shape, { kind: K }>> {
  const shape = typeof value === 'string' ? scope.shapes.get(value) : undefined;
  if (shape && (kinds as readonly ShapeKind[]).includes(shape.kind)) return made(shape as Extract<Shape, { kind: K }>);
  return failed(null, whyNotTaken(value, shape, kinds, scope));
}

function whyNotTaken(value: unknown, shape: Shape | undefined, kinds: readonly ShapeKind[], scope: Scope): Message {
  const wanted = { said: kindWords(kinds) };
  if (typeof value !== 'string') return message('problem.unreadable', { wanted });
  if (!shape) return scope.absent(value) ?? strangeObject(value, wanted.said, scope);
  const found = { said: kindWords([shape.kind]) };
  return message('problem.kind', { name: { named: value }, found, wanted });
}

/** What to say of a name that nothing on the sheet has. */
function strangeObject(name: Name, wanted: Message, scope: Scope): Message {
  if (scope.measures.has(name)) return message('problem.measure', { name: { named: name }, wanted: { said: wanted } });
  const meant = nearestSpelling(name, scope.shapes.keys());
  const word = { name: wordOf(name) };
  return meant === null ? message('problem.unknown', word) : message('problem.unknown-meant', { ...word, meant });
}
