import { evaluate } from '../../drafting/expression.ts';
import type { Quantity } from '../../drafting/quantity.ts';
import type { Sheet } from '../../drafting/sheet.ts';
import { bareLength } from '../../drafting/take/amount.ts';
import type { Blank } from '../../drafting/verbs.ts';
import { type Message, message } from '../../words/message.ts';
import type { Filling } from './bench.ts';
import { directionSaid } from './direction-words.ts';
import { spelt } from './name-trouble.ts';
import type { Option } from './options.ts';

/** What was typed into a blank, understood; or what stands in the way. */
export type Typed =
  | { readonly ok: true; readonly value: Filling; readonly worth: Quantity | null }
  | { readonly ok: false; readonly message: Message };

/** Reads what was typed into a blank. `speak` says an option's words, by which it may be typed too. */
export function readTyped(
  text: string,
  blank: Blank,
  sheet: Sheet,
  options: readonly Option[],
  speak: (words: Message) => string,
): Typed {
  if (blank.takes === 'length' || blank.takes === 'angle' || blank.takes === 'number')
    return amount(withNames(withPoints(text), sheet, speak), blank.takes, sheet);
  if (blank.takes === 'place') return place(withPoints(text), sheet);
  const wanted = text.trim().toLowerCase();
  const found =
    options.find((option) => speak(option.words).toLowerCase() === wanted) ??
    options.find((option) => nameIn(option) === spelt(text));
  if (found) return { ok: true, value: found.value, worth: null };
  const direction = blank.takes === 'toward' || blank.takes === 'near' ? directionSaid(text, speak) : null;
  if (direction) return { ok: true, value: direction, worth: null };
  return { ok: false, message: message('table.no-such', { text: text.trim() }) };
}

/**
 * Decimals with a point, as the drafting language has them: typed they may be with a comma too (ISO 80000-1 has both). A comma
 * parts nothing where a figure stands right before and behind it.
 */
export function withPoints(text: string): string {
  return text.replaceAll(/(?<=\d),(?=\d)/g, '.');
}

/** An amount with its measures spelt as they are named: they may be typed as they are read, with spaces. */
function withNames(text: string, { measures }: Sheet, speak: (words: Message) => string): string {
  const spellings = [...measures.keys()].flatMap((name) => {
    const words = speak(message('table.label', { name: { named: name } }));
    return [words, name.replaceAll('-', ' ')].map((said) => ({ said, name }));
  });
  // The longest first: one may begin as another does.
  const longest = spellings.filter(({ said, name }) => said !== name).sort((a, b) => b.said.length - a.said.length);
  return longest.reduce((typed, { said, name }) => typed.replaceAll(wholeWords(said), name), text);
}

/** The words alone, spaces or hyphens between them. */
function wholeWords(said: string): RegExp {
  const words = said.split(/[\s-]+/).map((word) => word.replaceAll(/[.*+?^${}()|[\]\\]/g, '\\$&'));
  return new RegExp(`(?<![\\p{L}\\p{N}-])${words.join('(?:\\s+|-)')}(?![\\p{L}\\p{N}-])`, 'giu');
}

function nameIn({ value }: Option): string | null {
  return typeof value === 'string' ? value : null;
}

function amount(text: string, dimension: Quantity['dimension'], sheet: Sheet): Typed {
  const found = evaluate(text, sheet.measures);
  if (!found.ok) return found;
  const { quantity } = found;
  if (quantity.dimension === dimension) return { ok: true, value: text.trim(), worth: quantity };
  const bare = quantity.dimension === 'number';
  if (bare && dimension === 'length') return { ok: false, message: bareLength(text.trim()) };
  if (bare && dimension === 'angle')
    return { ok: false, message: message('expression.bare-angle', { text: text.trim() }) };
  return {
    ok: false,
    message: message('expression.wanted', { text: text.trim(), found: quantity.dimension, wanted: dimension }),
  };
}

/** A place is two lengths: to the side of the centre front, and above the waist. */
function place(text: string, sheet: Sheet): Typed {
  const [across, up, ...rest] = text.split(/[;,]/).map((part) => amount(part.trim(), 'length', sheet));
  if (!across || !up || rest.length > 0) return { ok: false, message: message('table.place-form') };
  if (!across.ok) return across;
  if (!up.ok) return up;
  return { ok: true, value: [across.worth?.value ?? 0, up.worth?.value ?? 0], worth: null };
}
