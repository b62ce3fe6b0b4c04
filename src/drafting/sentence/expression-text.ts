import { angleText, lengthText } from '../../words/length.ts';
import { message } from '../../words/message.ts';
import { nameText, type Reader, say } from '../../words/say.ts';
import { evaluate, type Literal, parse, print } from '../expression.ts';
import type { Quantity } from '../quantity.ts';
import type { Numbers, Speaker } from './speaker.ts';

/**
 * An expression as it stands in a sentence: as typed, tidied, with the trade's words for names, and with an author's
 * lengths in the reader's unit; and where it is more than a number and the measures are at hand, its value in the
 * reader's unit in brackets. What cannot be understood is shown as typed.
 */
export function expressionText(text: string, { reader, measures, numbers }: Speaker): string {
  const parsed = parse(text);
  if (!parsed.ok) return text.trim() === '' ? say(message('fill.missing'), reader) : text;
  const expression = print(parsed.tree, {
    name: (name) => nameText(name, reader),
    literal: (literal) => literalText(literal, reader, numbers),
    signs: { '+': '+', '-': '−', '*': '×', '/': '÷' },
  });
  const isNumber = parsed.tree.kind === 'literal';
  const found = isNumber || measures === null ? null : evaluate(text, measures);
  if (!found?.ok) return expression;
  return say(message('fill.worth', { expression, value: quantityText(found.quantity, reader) }), reader);
}

function literalText({ text, quantity }: Literal, { unit }: Reader, numbers: Numbers): string {
  if (quantity.dimension === 'length' && numbers === 'in-reader-unit') return lengthText(quantity.value, unit);
  return text.replace(/ deg$/, '°');
}

/** A quantity in the reader's unit; a bare number to three decimals. */
function quantityText({ dimension, value }: Quantity, reader: Reader): string {
  if (dimension === 'length') return lengthText(value, reader.unit);
  if (dimension === 'angle') return angleText(value);
  return String(Math.round(value * 1000) / 1000).replace('-', '−');
}
