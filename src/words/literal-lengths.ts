import { statedText } from './length.ts';
import type { Unit } from './unit.ts';

const MM: Readonly<Record<string, number>> = { mm: 1, cm: 10, in: 25.4 };

/** A length written out in braces: `{1 1/4 in}`, `{3.2 cm}`, `{1/8 in}`. */
const LITERAL = /\{(\d+(?:\.\d+)?|(?:\d+ )?\d+\/\d+) (mm|cm|in)\}/g;

/** A text whose lengths stand in braces, `{1 1/4 in}`, with each of them in the reader's unit. */
export function inReadersUnit(text: string, unit: Unit): string {
  return text.replace(LITERAL, (_, number: string, own: string) =>
    statedText(numberOf(number) * (MM[own] as number), unit),
  );
}

/** `3.2`, `1/8` or `1 1/4` as a number. */
function numberOf(text: string): number {
  return text.split(' ').reduce((sum, part) => {
    const [top = Number.NaN, bottom = 1] = part.split('/').map(Number);
    return sum + top / bottom;
  }, 0);
}
