/** A length that a text gives as it stands, whoever reads it, and as it is to be written. */
export interface LoneLength {
  readonly found: string;
  /** The same in braces, in which each reader is told it in the unit of the reader. */
  readonly braced: string;
}

/** A number with its unit: `3.2 cm`, `1 1/4 in`, `3-inch`. What is no unit is left alone: `step 3 in the working`. */
const LENGTH =
  /(\d+(?:\.\d+)?(?:\s\d+\/\d+|\/\d+)?[½¼¾⅛⅜⅝⅞]?|[½¼¾⅛⅜⅝⅞])[\s-]?(cm|mm|inches|inch|in(?!\s+(?:the|a|an|your|this|that|each|its|their)\b)|″)(?![\w/])/g;

/** The first length of a text that stands in one unit for all readers; null where there is none. What stands in braces is none. */
export function loneLength(text: string): LoneLength | null {
  const outside = text.replace(/\{\d[^{}]*\}/g, (braced) => '·'.repeat(braced.length));
  for (const { 0: found, 1: number = '', 2: unit = '', index } of outside.matchAll(LENGTH)) {
    // What is a part of an expression is to be typed as it stands there.
    const isReckoned =
      /[-+*/=]\s*$/.test(outside.slice(0, index)) || /^\s+[-+*/]\s/.test(outside.slice(index + found.length));
    if (!isReckoned) return { found, braced: `{${tidied(number)} ${unit.endsWith('m') ? unit : 'in'}}` };
  }
  return null;
}

const FRACTIONS: Readonly<Record<string, string>> = {
  '½': '1/2',
  '¼': '1/4',
  '¾': '3/4',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
};

function tidied(number: string): string {
  return number
    .replace(/[½¼¾⅛⅜⅝⅞]/, (sign) => ` ${FRACTIONS[sign]}`)
    .replace(/\s+/g, ' ')
    .trim();
}
