import type { Blank } from '../../drafting/verbs.ts';
import type { Option } from '../model/options.ts';
import type { Say } from '../say.ts';

/** The entries of a list that what is typed leaves; all of them while nothing is. */
export function narrowed(options: readonly Option[], words: string | null, blank: Blank, say: Say): readonly Option[] {
  if (words === null || words === '') return options;
  return options.filter((option) => matches(say.message(option.words), words, isAmount(blank)));
}

/**
 * The one entry that what was typed can become, or of several the one that begins with it; null where there are more, or where it
 * is a part of an expression.
 */
export function onlyOne(shown: readonly Option[], words: string, say: Say): Option | null {
  if (!/^[\p{L}\p{N} -]+$/u.test(words)) return null;
  const begun = shown.filter(({ words: entry }) => plainly(say.message(entry)).startsWith(plainly(words)));
  const [only, ...more] = begun.length > 0 ? begun : shown;
  return only && more.length === 0 ? only : null;
}

function plainly(words: string): string {
  return words.trim().toLowerCase().replaceAll('-', ' ');
}

/** Whether what cannot be read is a fault already, or may still become the beginning of an entry. */
export function isWrong(blank: Blank, shown: readonly Option[]): boolean {
  return isAmount(blank) || blank.takes === 'place' || shown.length === 0;
}

/** Whether a blank takes an amount, which is typed rather than chosen. */
export function isAmount(blank: Blank): boolean {
  return blank.takes === 'length' || blank.takes === 'angle' || blank.takes === 'number';
}

/** A list of objects narrows by what is typed; an amount's list narrows by the word being typed last. */
function matches(option: string, typed: string, amount: boolean): boolean {
  const word = plainly(amount ? (typed.match(/[a-z][a-z0-9 -]*$/i)?.[0] ?? '') : typed);
  return word === '' ? !amount : plainly(option).includes(word);
}

/** What a typed amount comes to, in words. */
export function amountText(
  { dimension, value }: { readonly dimension: string; readonly value: number },
  say: Say,
): string {
  const amount =
    dimension === 'length'
      ? { mm: value }
      : dimension === 'angle'
        ? { radians: value }
        : Math.round(value * 1000) / 1000;
  return say('table.amount-is', { amount });
}
