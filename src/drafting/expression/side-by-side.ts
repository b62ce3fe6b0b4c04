import { type Message, message } from '../../words/message.ts';
import { unitWords } from '../name.ts';
import type { Token } from './tokens.ts';

/** What to say of two things that stand side by side with no sign between them. */
export function sideBySide(before: Token | undefined, after: Token): Message {
  if (after.text === ')') return message('expression.bracket-close');
  if (before === undefined || after.kind !== 'name') return noSign(before, after);
  const times = /^x(\d*)$/.exec(after.text);
  if (times) return message('expression.times', { written: `${before.text} * ${times[1] || exampleFor(before)}` });
  return before.kind === 'name' ? afterName(before.text, after.text) : afterNumber(before, after);
}

/** What a number may be taken times, and what a measure may. */
const exampleFor = ({ kind }: Token): string => (kind === 'literal' ? 'stand' : '2');

function noSign(before: Token | undefined, after: Token): Message {
  return message('expression.no-sign', { before: before?.text ?? '', after: after.text });
}

function afterName(name: string, word: string): Message {
  if (unitWords.includes(word)) return unitAfterName(name, word);
  if (name === 'half')
    return message('expression.word', { word: name, sign: '/ 2', written: `${exampleName(word)} / 2` });
  const sign = signs.get(word);
  if (sign) return message('expression.word', { word, sign, written: `${name} ${sign} 6 mm` });
  return message('expression.two-names', { words: `${name} ${word}`, joined: `${name}-${word}` });
}

/** Signs, as they are spoken of in lessons. */
const signs: ReadonlyMap<string, string> = new Map([
  ['less', '-'],
  ['minus', '-'],
  ['plus', '+'],
  ['and', '+'],
]);

/** What half was wanted of; “half the …” says it only after the next word. */
const exampleName = (word: string): string => (word === 'the' || word === 'of' ? 'stand' : word);

/** `stand-6 mm` reads as a name and a stray unit; a minus was meant. */
function unitAfterName(name: string, unit: string): Message {
  const stuck = /^(.+)-(\d+)$/.exec(name);
  if (stuck) return message('expression.space-minus', { written: `${stuck[1]} - ${stuck[2]} ${unit}` });
  return message('expression.unit-after-name', { name, unit });
}

function afterNumber(number: Token, word: Token): Message {
  const stuckUnit = unitWords.find((unit) => word.text.startsWith(`${unit}-`));
  if (stuckUnit) {
    const written = `${number.text} ${stuckUnit} - ${word.text.slice(stuckUnit.length + 1)}`;
    return message('expression.space-minus', { written });
  }
  const unit = number.kind === 'literal' && number.quantity.dimension === 'number' ? unitMeant(word.text) : null;
  if (unit === null) return noSign(number, word);
  return message('expression.unit-spelt', { found: word.text, written: `${number.text} ${unit}` });
}

/** How people write units that the grammar writes short. */
const spellings: Readonly<Record<string, RegExp>> = {
  mm: /^(?:mms|milli?met(?:er|re)s?)$/,
  cm: /^(?:cms|centi?met(?:er|re)s?)$/,
  in: /^(?:ins|inchs|inche|inces)$/,
  deg: /^(?:degs|degrees?|grad)$/,
  rad: /^(?:rads|radians?)$/,
};

/** The unit that a word spells otherwise; null when it spells none. */
function unitMeant(word: string): string | null {
  return Object.entries(spellings).find(([, spelt]) => spelt.test(word))?.[0] ?? null;
}
