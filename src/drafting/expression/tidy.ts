const fractions: Readonly<Record<string, string>> = {
  '½': '1/2',
  '⅓': '1/3',
  '⅔': '2/3',
  '¼': '1/4',
  '¾': '3/4',
  '⅕': '1/5',
  '⅖': '2/5',
  '⅗': '3/5',
  '⅘': '4/5',
  '⅙': '1/6',
  '⅚': '5/6',
  '⅐': '1/7',
  '⅛': '1/8',
  '⅜': '3/8',
  '⅝': '5/8',
  '⅞': '7/8',
  '⅑': '1/9',
  '⅒': '1/10',
};

const FRACTION = new RegExp(`[${Object.keys(fractions).join('')}]`, 'g');

/** What is tidy as it stands, as most expressions are: words, numbers and signs with one space between. */
const TIDY = /^[a-z0-9.()+*/-]+(?: [a-z0-9.()+*/-]+)*$/;

/**
 * The expression in the few characters the grammar knows: fractions spelt out, one kind of minus, of inch mark, of
 * space, and lower case. Anything else is left as it stands, for the reader to object to.
 */
export function tidy(text: string): string {
  if (TIDY.test(text)) return text;
  return text
    .toLowerCase()
    .replace(FRACTION, (sign) => ` ${fractions[sign]} `)
    .replace(/[\u2010-\u2015\u2212\u00ad]/g, '-')
    .replace(/[“”„‟″]|''|’’|′′/g, '"')
    .replace(/[×·∙]/g, '*')
    .replace(/÷/g, '/')
    .replace(/[\u2044\u2215]/g, '/')
    .replace(/[˚º]/g, '°')
    .replace(/\s+/g, ' ')
    .trim();
}
