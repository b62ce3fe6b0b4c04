import { type Message, message } from '../../words/message.ts';
import { EXPRESSION_LENGTH } from '../limits.ts';
import { unitWords } from '../name.ts';
import { sideBySide } from './side-by-side.ts';
import { tidy } from './tidy.ts';
import { type Token, tokensOf } from './tokens.ts';
import type { Sign, Tree } from './tree.ts';

export type Parsed = { readonly ok: true; readonly tree: Tree } | { readonly ok: false; readonly message: Message };

/**
 * Understands an expression. In the grammar: sums of products of signed terms; a term is a number with or without a
 * unit, a name, or an expression in brackets. Anything else is a message that says what to write.
 */
export function parse(text: string): Parsed {
  // Is it too long to be meant?
  if (text.length > EXPRESSION_LENGTH) {
    return { ok: false, message: message('expression.too-long', { limit: EXPRESSION_LENGTH }) };
  }
  const cut = tokensOf(tidy(text));
  if (!cut.ok) return cut;
  // Is there nothing there?
  if (cut.tokens.length === 0) return { ok: false, message: message('expression.empty') };
  const rest: Rest = { tokens: cut.tokens, at: 0 };
  const sum = readSum(rest);
  if (!sum.ok) return sum;
  const left = rest.tokens[rest.at];
  if (left) return { ok: false, message: sideBySide(rest.tokens[rest.at - 1], left) };
  return sum;
}

interface Rest {
  readonly tokens: readonly Token[];
  at: number;
}

/** Takes the next token when it is one of these signs. */
function takeSign<S extends string>(rest: Rest, ...signs: readonly S[]): S | null {
  const token = rest.tokens[rest.at];
  if (token?.kind !== 'sign' || !(signs as readonly string[]).includes(token.text)) return null;
  rest.at += 1;
  return token.text as unknown as S;
}

const readSum = (rest: Rest): Parsed => readChain(rest, readProduct, '+', '-');
const readProduct = (rest: Rest): Parsed => readChain(rest, readSigned, '*', '/');

function readChain(rest: Rest, readTerm: (rest: Rest) => Parsed, ...signs: readonly Sign[]): Parsed {
  let left = readTerm(rest);
  while (left.ok) {
    const sign = takeSign(rest, ...signs);
    if (sign === null) return left;
    const right = readTerm(rest);
    if (!right.ok) return right;
    left = { ok: true, tree: { kind: 'pair', sign, left: left.tree, right: right.tree } };
  }
  return left;
}

function readSigned(rest: Rest): Parsed {
  const sign = takeSign(rest, '-', '+');
  if (sign === null) return readTerm(rest);
  const signed = readSigned(rest);
  if (!signed.ok || sign === '+') return signed;
  return { ok: true, tree: { kind: 'minus', of: signed.tree } };
}

function readTerm(rest: Rest): Parsed {
  const before = rest.tokens[rest.at - 1];
  const token = rest.tokens[rest.at];
  if (!token) return { ok: false, message: message('expression.stops', { after: before?.text ?? '' }) };
  rest.at += 1;
  if (token.kind === 'literal') return { ok: true, tree: token };
  if (token.kind === 'name') return readName(token.text);
  if (token.text !== '(') return { ok: false, message: message('expression.no-value', { found: token.text }) };
  const inside = readSum(rest);
  if (!inside.ok) return inside;
  if (takeSign(rest, ')') !== null) return inside;
  const next = rest.tokens[rest.at];
  return { ok: false, message: next ? sideBySide(rest.tokens[rest.at - 1], next) : message('expression.bracket-open') };
}

function readName(name: string): Parsed {
  if (unitWords.includes(name)) return { ok: false, message: message('expression.unit-alone', { unit: name }) };
  return { ok: true, tree: { kind: 'name', name } };
}
