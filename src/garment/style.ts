import { evaluate } from '../drafting/expression.ts';
import type { Quantity } from '../drafting/quantity.ts';
import type { Name } from '../drafting/step.ts';
import { type Message, message } from '../words/message.ts';
import { type StyleMeasure, styleMeasureNamed, styleMeasures } from './style-measures.ts';

export type Style = ReadonlyMap<Name, Quantity>;

export interface StyleError {
  /** The style measure at fault; empty when the style as a whole is. */
  readonly path: string;
  readonly message: Message;
}

export type StyleReading =
  | { readonly ok: true; readonly style: Style }
  | { readonly ok: false; readonly errors: readonly StyleError[] };

/**
 * Reads a style: name to expression with its unit, `{ overlap: '1 1/4 in' }`. An expression may use the style measures
 * read before it, `fall: 'stand + 12 mm'`. Reports every measure that is unknown, unreadable, no length or out of range.
 * `own` are names of measures beside those of the course, which may be any length on a table.
 */
export function readStyle(written: Readonly<Record<string, unknown>>, own: readonly Name[] = []): StyleReading {
  const style = new Map<Name, Quantity>();
  const errors: StyleError[] = [];
  for (const [name, value] of Object.entries(written)) {
    const range = styleMeasureNamed(name) ?? (own.includes(name) ? ANY_LENGTH : null);
    const read = readMeasure(name, value, { range, before: style });
    if (read.ok) style.set(name, read.quantity);
    else errors.push({ path: name, message: read.message });
  }
  return errors.length === 0 ? { ok: true, style } : { ok: false, errors };
}

type MeasureReading =
  | { readonly ok: true; readonly quantity: Quantity }
  | { readonly ok: false; readonly message: Message };

/** What a measure that the course does not know may be, mm: as long as a table is. */
const ANY_LENGTH: Range = { least: 0, most: 1000 };

type Range = Pick<StyleMeasure, 'least' | 'most'>;

interface Around {
  /** Null where there is no such measure. */
  readonly range: Range | null;
  readonly before: Style;
}

function readMeasure(name: string, value: unknown, { range: measure, before }: Around): MeasureReading {
  const refuse = (said: Message): MeasureReading => ({ ok: false, message: said });
  // Is it a style measure?
  if (!measure)
    return refuse(message('garment.style-unknown', { name, known: styleMeasures.map((one) => one.name).join(', ') }));
  const named = { name, measure: { named: name } };
  // Is it an expression?
  if (typeof value !== 'string') {
    return refuse(message('garment.style-not-text', { ...named, found: JSON.stringify(value) ?? String(value) }));
  }
  const worked = evaluate(value, before);
  if (!worked.ok)
    return refuse(message('garment.style-unreadable', { ...named, found: value, why: { said: worked.message } }));
  const { quantity } = worked;
  // Is it a length?
  if (quantity.dimension !== 'length') return refuse(message('garment.style-not-a-length', { ...named, found: value }));
  // Is it one a jacket could have?
  if (quantity.value < measure.least || quantity.value > measure.most) {
    const range = { least: { mm: measure.least }, most: { mm: measure.most } };
    return refuse(message('garment.style-range', { ...named, found: { mm: quantity.value }, ...range }));
  }
  return worked;
}
