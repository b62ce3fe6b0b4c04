import type { YAMLError } from 'yaml';
import { message } from '../../words/message.ts';
import type { SyntaxFault } from './fault.ts';
import { lineSlip, loose } from './line-slip.ts';
import { type Line, lineAt, linesOf } from './lines.ts';
import { type Token, tokensIn } from './tokens.ts';

/**
 * The first slip in a YAML text; null where there is none. One at a time: what a parser says after the first is mostly
 * said because of it. Signs that make a text something else (`*`, `&`, `!`) are slips too: no file of ours needs them.
 */
export function syntaxFault(text: string, [error]: readonly YAMLError[]): SyntaxFault | null {
  const strange = strangeSpace(text, INDENT);
  if (strange !== null) return strange;
  const tokens = tokensIn(text);
  const sign = tokens.find(({ type }) => type === 'sign');
  if (sign !== undefined) return beginsWith(sign.source.slice(0, 1), sign.offset);
  if (error === undefined) return cutOff(tokens, text);
  return openQuote(tokens) ?? strangeSpace(text, BLANK_LINE) ?? byCode(error, tokens, linesOf(text));
}

/** A tab, or a space that is not the ordinary one, before what stands in a line. */
const INDENT = /^ *([^\S \n\r])[^\S\n]*\S/mu;
/** The same where nothing else stands there. It does no harm but within a text under >-, which would end there. */
const BLANK_LINE = /^ *([^\S \n\r])[^\S\n]*$/mu;

function strangeSpace(text: string, where: RegExp): SyntaxFault | null {
  const found = where.exec(text.replace(/^\uFEFF/u, ' '));
  if (found === null) return null;
  return {
    offset: found.index + found[0].indexOf(found[1] ?? ''),
    message: message(found[1] === '\t' ? 'yaml.tab' : 'yaml.odd-space'),
  };
}

/** The rest of a text that is taken for a remark: `Buttonhole #1`. A remark that is meant has a space after its sign. */
function cutOff(tokens: readonly Token[], text: string): SyntaxFault | null {
  const cut = tokens.find(
    ({ type, source, offset }) =>
      type === 'remark' && /^#[^\s#]/.test(source) && /\S/.test(text.slice(text.lastIndexOf('\n', offset) + 1, offset)),
  );
  return cut === undefined
    ? null
    : { offset: cut.offset, message: message('yaml.remark', { cut: cut.source.slice(0, 40) }) };
}

/** A quoted text that does not end on its line: wherever the reading stopped then, this is where it went astray. */
function openQuote(tokens: readonly Token[]): SyntaxFault | null {
  const open = tokens.find(({ type, source }) => type === 'quoted' && !/^(["']).*\1$/.test(source));
  return open === undefined ? null : { offset: open.offset, message: message('yaml.quote-open') };
}

/** What the parser says of lines, hyphens, colons and braces that do not stand as they should. */
const layout = new Set([
  'BAD_INDENT',
  'BLOCK_AS_IMPLICIT_KEY',
  'BLOCK_IN_FLOW',
  'KEY_OVER_1024_CHARS',
  'MISSING_CHAR',
  'MULTILINE_IMPLICIT_KEY',
  'UNEXPECTED_TOKEN',
]);

/** By what the parser calls the slip, and by what stands around it. */
function byCode(
  { code, pos: [offset], message: said }: YAMLError,
  tokens: readonly Token[],
  lines: readonly Line[],
): SyntaxFault {
  const line = lines[lineAt(lines, offset)] ?? { text: '', start: 0 };
  const before = line.text.slice(0, offset - line.start).trimEnd();
  switch (code) {
    case 'DUPLICATE_KEY':
      return { offset, message: message('yaml.twice', { field: fieldAt(line, offset) }) };
    case 'MULTIPLE_DOCS':
      return { offset, message: message('yaml.dashes') };
    case 'BAD_SCALAR_START':
      return beginsWith(line.text.charAt(offset - line.start), offset);
    default:
      break;
  }
  const slip = layout.has(code) ? (loose(line) ?? followed(line, before, tokens) ?? lineSlip(lines, offset)) : null;
  return slip ?? { offset, message: message('yaml.other', { why: said.replace(/ at line .*/s, '') }) };
}

/** Does what stands before in the line end something, after which nothing may follow: a text in quotation marks, a group, a list? */
function followed({ start, text }: Line, before: string, tokens: readonly Token[]): SyntaxFault | null {
  const offset = start + before.length;
  if (before.length === text.trimEnd().length) return null;
  const quoted = tokens.some((one) => one.offset >= start && one.offset + one.source.length === offset);
  if (quoted) return { offset, message: message('yaml.quote-after') };
  return /[}\]]$/.test(before) ? { offset, message: message('yaml.braces-after') } : null;
}

function fieldAt({ text, start }: Line, offset: number): string {
  return /^[^:]*/.exec(text.slice(offset - start))?.[0].trim() ?? '';
}

function beginsWith(sign: string, offset: number): SyntaxFault {
  return { offset, message: message('yaml.sign', { sign }) };
}
