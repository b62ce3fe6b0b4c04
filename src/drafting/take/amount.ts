import { type Message, message } from '../../words/message.ts';
import { compute } from '../expression/compute.ts';
import { parse, unknownMeasure } from '../expression.ts';
import { kindWords, wantedWords } from '../kinds.ts';
import { failed, made, type Outcome } from '../outcome.ts';
import type { Quantity } from '../quantity.ts';
import type { Scope } from '../scope.ts';

/** The value of an expression in mm, radians or plainly, where it has the dimension wanted. */
export function takeAmount(value: unknown, wanted: Quantity['dimension'], scope: Scope): Outcome<number> {
  if (typeof value !== 'string') {
    return failed(null, message('problem.unreadable', { wanted: { said: wantedWords({ takes: wanted }) } }));
  }
  const parsed = parse(value);
  if (!parsed.ok) return failed(null, parsed.message);
  const found = compute(parsed.tree, scope.measures, (name) => strangeMeasure(name, scope));
  if (!found.ok) return failed(null, found.message);
  if (found.quantity.dimension === wanted) return made(found.quantity.value);
  return failed(null, wrongDimension(value.trim(), found.quantity.dimension, wanted));
}

/** What to say of a name in an expression that is no measure. */
function strangeMeasure(name: string, scope: Scope): Message {
  const shape = scope.shapes.get(name);
  if (shape) return message('expression.not-length', { name, kind: { said: kindWords([shape.kind]) } });
  return scope.absent(name) ?? unknownMeasure(name, scope.measures);
}

function wrongDimension(text: string, found: Quantity['dimension'], wanted: Quantity['dimension']): Message {
  if (found === 'number' && wanted === 'length') return bareLength(text);
  if (found === 'number' && wanted === 'angle') return message('expression.bare-angle', { text });
  return message('expression.wanted', { text, found, wanted });
}

/** What to say of a number that should be a length: of one that was typed as a figure, what it may have been meant for. */
export function bareLength(text: string): Message {
  return message(/^[\d./ ]+$/.test(text) ? 'expression.bare-figure' : 'expression.bare-length', { text });
}
