import { evaluate } from '../../drafting/expression.ts';
import { lengthText } from '../../words/length.ts';
import type { Unit } from '../../words/unit.ts';

/** A length that a text gives in one unit only, as it stands there, and as it reads in both. */
export interface LoneLength {
  readonly found: string;
  readonly both: string;
}

/** A number with its unit: `3.2 cm`, `1 1/4 in`, `3-inch`. What is no unit is left alone: `step 3 in the working`. */
const LENGTH =
  /(?:\d+(?:\.\d+)?(?:\s\d+\/\d+|\/\d+)?[½¼¾⅛⅜⅝⅞]?|[½¼¾⅛⅜⅝⅞])[\s-]?(?:cm|mm|inches|inch|in(?!\s+(?:the|a|an|your|this|that|each|its|their)\b)|″)(?![\w/])/g;

/** The first length of a text that a reader of the other unit would have to reckon; null where there is none. */
export function loneLength(text: string): LoneLength | null {
  for (const sentence of text.split(/(?<=[.!?;:])\s+/)) {
    const found = loneIn(sentence);
    if (found !== null) return found;
  }
  return null;
}

interface Written {
  readonly found: string;
  readonly unit: Unit;
}

/** In brackets stands what came before them, in the other unit: `3 to 4 in (7.5 to 10 cm)`. */
function loneIn(sentence: string): LoneLength | null {
  let open: readonly Written[] = [];
  let before = '';
  for (const part of sentence.split(/(\([^()]*\))/)) {
    const lengths = lengthsIn(part);
    const [inside] = lengths;
    if (part.startsWith('(') && inside !== undefined) {
      // An inch may be written out: “a half-inch (1.3 cm) button”.
      const isAnswer = open.some(({ unit }) => unit !== inside.unit) || /inch/i.test(before);
      open = isAnswer ? open.filter(({ unit }) => unit === inside.unit) : [...open, ...lengths];
    } else open = [...open, ...lengths];
    before += part;
  }
  const [first] = open;
  // Both units beside each other do as well: “3 cm or 1 1/4 in”.
  return first === undefined || open.some(({ unit }) => unit !== first.unit) ? null : inBoth(first);
}

/** The lengths of a part of a sentence; what is a part of an expression is to be written as it stands there, and is none. */
function lengthsIn(part: string): readonly Written[] {
  return [...part.matchAll(LENGTH)].flatMap(({ 0: found, index }) => {
    const isReckoned =
      /[-+*/=]\s*$/.test(part.slice(0, index)) || /^\s+[-+*/]\s/.test(part.slice(index + found.length));
    return isReckoned ? [] : [{ found, unit: /[cm]m$/.test(found) ? 'cm' : 'in' }];
  });
}

function inBoth({ found, unit }: Written): LoneLength {
  const worked = evaluate(found.replace('-', ' '), new Map());
  const mm = worked.ok ? worked.quantity.value : 0;
  const other = unit === 'cm' ? 'in' : 'cm';
  return { found, both: `${lengthText(mm, unit)} (${lengthText(mm, other)})` };
}
