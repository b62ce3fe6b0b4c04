import { type Message, message } from '../../words/message.ts';
import { bare, millimetres, type Quantity, radians } from '../quantity.ts';

export type Token =
  | { readonly kind: 'literal'; readonly text: string; readonly quantity: Quantity }
  | { readonly kind: 'name'; readonly text: string }
  | { readonly kind: 'sign'; readonly text: '+' | '-' | '*' | '/' | '(' | ')' };

export type Tokens =
  | { readonly ok: true; readonly tokens: readonly Token[] }
  | { readonly ok: false; readonly message: Message };

const NUMBER = /(\d+) (\d+)\/(\d+)(?![\d.])|(\d+)\/(\d+)(?![\d.])|\d+\.\d+|\.\d+|\d+/y;
// A unit does not end where a hyphen and a letter follow: `2 in-step` is left for the writer to space out.
const UNIT = / ?(?:(mm|cm|inches|inch|in|deg|rad)(?![a-z0-9]|-[a-z])|(["°]))/y;
const NAME = /[a-z][a-z0-9]*(?:-[a-z0-9]+)*/y;
const SIGN = /[-+*/()]/y;

const units: Readonly<Record<string, { readonly written: string; readonly of: (value: number) => Quantity }>> = {
  mm: { written: 'mm', of: millimetres },
  cm: { written: 'cm', of: (value) => millimetres(value * 10) },
  in: { written: 'in', of: (value) => millimetres(value * 25.4) },
  deg: { written: 'deg', of: (value) => radians((value * Math.PI) / 180) },
  rad: { written: 'rad', of: radians },
};

const unitNamed: Readonly<Record<string, string>> = { '"': 'in', inch: 'in', inches: 'in', '°': 'deg' };

function match(pattern: RegExp, text: string, at: number): RegExpExecArray | null {
  pattern.lastIndex = at;
  return pattern.exec(text);
}

/** Cuts a tidied expression into numbers with their units, names and signs. */
export function tokensOf(text: string): Tokens {
  const tokens: Token[] = [];
  for (let at = 0; at < text.length; ) {
    const next = nextToken(text, at);
    if (!next.ok) return next;
    if (next.token) tokens.push(next.token);
    at = next.end;
  }
  return { ok: true, tokens };
}

/** The token that begins at `at` (null where a space stands), and where it ends. */
type Next =
  | { readonly ok: true; readonly token: Token | null; readonly end: number }
  | { readonly ok: false; readonly message: Message };

function nextToken(text: string, at: number): Next {
  const number = match(NUMBER, text, at);
  if (number) return literalOf(number, match(UNIT, text, NUMBER.lastIndex), NUMBER.lastIndex);
  const word = match(NAME, text, at);
  if (word) return { ok: true, token: { kind: 'name', text: word[0] }, end: NAME.lastIndex };
  const sign = match(SIGN, text, at);
  if (sign) return { ok: true, token: { kind: 'sign', text: sign[0] as '+' }, end: SIGN.lastIndex };
  return text[at] === ' ' ? { ok: true, token: null, end: at + 1 } : { ok: false, message: strange(text, at) };
}

function literalOf(number: RegExpExecArray, unit: RegExpExecArray | null, numberEnd: number): Next {
  const text = number[0];
  const value = numberIn(number);
  if (value === null) return { ok: false, message: message('expression.zero', { text }) };
  if (unit === null) return { ok: true, token: { kind: 'literal', text, quantity: bare(value) }, end: numberEnd };
  const word = unit[1] ?? unit[2] ?? '';
  const { written, of } = units[unitNamed[word] ?? word] as (typeof units)[string];
  const token: Token = { kind: 'literal', text: `${text} ${written}`, quantity: of(value) };
  return { ok: true, token, end: numberEnd + unit[0].length };
}

/** The value of a decimal, a fraction or a whole number with a fraction; null when it divides by zero. */
function numberIn([text, whole, top, bottom, aloneTop, aloneBottom]: RegExpExecArray): number | null {
  const under = bottom ?? aloneBottom;
  if (under === undefined) return Number(text);
  if (Number(under) === 0) return null;
  return Number(whole ?? 0) + Number(top ?? aloneTop) / Number(under);
}

function strange(text: string, at: number): Message {
  const found = String.fromCodePoint(text.codePointAt(at) ?? 0);
  const whole = /\d+$/.exec(text.slice(0, at));
  const rest = /^\d+(?: ?(?:mm|cm|in|deg)\b)?/.exec(text.slice(at + 1));
  if (found === ',' && whole && rest) return message('expression.comma', { written: `${whole[0]}.${rest[0]}` });
  if (found === '.') return message('expression.point');
  return message('expression.character', { found });
}
