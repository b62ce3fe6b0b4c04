import { type Message, message } from '../words/message.ts';
import { type Computed, compute } from './expression/compute.ts';
import { type Parsed, parse as parseAfresh } from './expression/parse.ts';
import { namesOfTree } from './expression/tree.ts';
import type { Quantity } from './quantity.ts';
import { nearestSpelling } from './spelling.ts';

export type { Parsed } from './expression/parse.ts';
export { print } from './expression/print.ts';
export type { Literal, Tree } from './expression/tree.ts';

/** Expressions come again and again (a draft is replayed on every figure), so what was understood is kept. */
const understood = new Map<string, Parsed>();
const KEPT = 4000;

/** Understands an expression; see `expression/parse.ts`. The same text gives the same object while it is remembered. */
export function parse(text: string): Parsed {
  const known = understood.get(text);
  if (known) return known;
  if (understood.size >= KEPT) understood.clear();
  const parsed = parseAfresh(text);
  understood.set(text, parsed);
  return parsed;
}

/** The value of an expression where the names in `measures` are known: mm, radians or a bare number, always finite. */
export function evaluate(text: string, measures: ReadonlyMap<string, Quantity>): Computed {
  const parsed = parse(text);
  if (!parsed.ok) return parsed;
  return compute(parsed.tree, measures, (name) => unknownMeasure(name, measures));
}

/** The names in an expression, each once; none when it cannot be understood. */
export function namesIn(text: string): readonly string[] {
  const parsed = parse(text);
  return parsed.ok ? namesOfTree(parsed.tree) : [];
}

/** Whether the expression names nothing, and so stays the same on every figure. False when it cannot be understood. */
export function hasNumberOnly(text: string): boolean {
  return parse(text).ok && namesIn(text).length === 0;
}

/** What to say of a name that is no measure: the minus that was meant, the nearest spelling, or what may be named. */
export function unknownMeasure(name: string, measures: ReadonlyMap<string, Quantity>): Message {
  const written = asDifference(name, measures);
  if (written !== null) return message('expression.unknown-minus', { name, written });
  const meant = nearestSpelling(name, measures.keys());
  if (meant !== null) return message('expression.unknown-meant', { name, meant });
  return message('expression.unknown', { name });
}

/** `fall-stand` as `fall - stand`, where both sides of a hyphen are measures or numbers; otherwise null. */
function asDifference(name: string, measures: ReadonlyMap<string, Quantity>): string | null {
  for (let at = name.indexOf('-'); at > 0; at = name.indexOf('-', at + 1)) {
    const first = name.slice(0, at);
    const rest = name.slice(at + 1);
    if (!measures.has(first)) continue;
    if (measures.has(rest) || /^\d/.test(rest)) return `${first} - ${rest}`;
    const further = asDifference(rest, measures);
    if (further !== null) return `${first} - ${further}`;
  }
  return null;
}
