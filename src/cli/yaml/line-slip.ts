import { message } from '../../words/message.ts';
import type { SyntaxFault } from './fault.ts';
import { indentOf, type Line, lineAt } from './lines.ts';

/** What a field looks like at the beginning of a line, a hyphen before it or not. */
const field = /^\s*(?:- +)*[\w-]+:(?:\s|$)/;

/** The slip that shows in the line where the reading stopped, or in the one beside it; null where the lines show none. */
export function lineSlip(lines: readonly Line[], offset: number): SyntaxFault | null {
  const at = lineAt(lines, offset);
  const here = lines[at];
  if (here === undefined) return null;
  const slip = missingSpace(here) ?? besideField(here) ?? inBraces(lines, at);
  return slip ?? missingHyphen(lines, at) ?? indented(lines, at, offset);
}

/** Is a brace left open, or a comma left out? */
function inBraces(lines: readonly Line[], at: number): SyntaxFault | null {
  const near = lines.slice(Math.max(0, at - 1), at + 1);
  const open = near.find(({ text }) => /\{[^}]*$/.test(text) && field.test(text.replace(/^[^{]*\{\s*/, '')));
  if (open !== undefined) return atColumn(open, open.text.lastIndexOf('{'), 'yaml.brace-open');
  const here = lines[at];
  const braced = here === undefined ? -1 : here.text.search(/[:-]\s+\{/);
  if (here === undefined || braced < 0) return null;
  return atColumn(here, here.text.indexOf('{'), 'yaml.comma');
}

/** Is a space left out after the colon, or after the hyphen of an entry? */
function missingSpace(line: Line): SyntaxFault | null {
  const colon = /^(\s*(?:- +)*[\w-]+):(?=[^\s:/])/.exec(line.text);
  if (colon !== null) return atColumn(line, colon[0].length - 1, 'yaml.colon-space');
  const hyphen = /^\s*-(?=[^\s-])/.exec(line.text);
  return hyphen === null ? null : atColumn(line, hyphen[0].length - 1, 'yaml.hyphen-space');
}

/** Does the text beside a field hold a colon, begin an entry of a list, or stand beside its >-? */
function besideField(line: Line): SyntaxFault | null {
  const name = field.exec(line.text)?.[0];
  if (name === undefined) return null;
  const text = line.text.slice(name.length);
  if (/^\s*[>|][+-]?\s+\S/.test(text)) return atColumn(line, name.length, 'yaml.beside');
  if (/^\s*- /.test(text)) return atColumn(line, name.length, 'yaml.hyphen-beside');
  return /:\s/.test(text.replace(/\{.*/, '')) ? atColumn(line, name.length, 'yaml.two-colons') : null;
}

/** Is the line neither a field nor the entry of a list? */
export function loose(line: Line): SyntaxFault | null {
  const looks = field.test(line.text) || /^\s*(?:-|[\w-]+:)/.test(line.text) || !/\S/.test(line.text);
  return looks ? null : atColumn(line, indentOf(line), 'yaml.loose');
}

/** Does an entry of the list that this entry belongs to begin without its hyphen? */
function missingHyphen(lines: readonly Line[], at: number): SyntaxFault | null {
  const spaces = /^( *)- /.exec(lines[at]?.text ?? '')?.[1];
  if (spaces === undefined) return null;
  const list = lines
    .slice(0, at)
    .findLastIndex(({ text }) => /^ *[\w-]+: *$/.test(text) && text.search(/\S/) <= spaces.length);
  const first = lines.slice(list + 1, at).find(({ text }) => /\S/.test(text));
  return list < 0 || first === undefined || /^ *-/.test(first.text)
    ? null
    : atColumn(first, indentOf(first), 'yaml.hyphen-missing');
}

/**
 * Where lines look right by themselves, it is how they stand to each other. What stopped before a line's own words minds
 * how that line is indented; what stopped among them has taken the line below for more of this one.
 */
function indented(lines: readonly Line[], at: number, offset: number): SyntaxFault | null {
  const [here, next] = [lines[at], lines[at + 1]];
  if (here === undefined) return null;
  const among = offset > here.start + indentOf(here);
  const below = among && next !== undefined && indentOf(next) > indentOf(here) && field.test(next.text);
  const fault = below ? next : here;
  return atColumn(fault, indentOf(fault), 'yaml.indent');
}

type Slip = Parameters<typeof message>[0] & `yaml.${string}`;

function atColumn(
  line: Line,
  column: number,
  key: Exclude<Slip, 'yaml.twice' | 'yaml.sign' | 'yaml.remark' | 'yaml.other'>,
): SyntaxFault {
  return { offset: line.start + column, message: message(key) };
}
