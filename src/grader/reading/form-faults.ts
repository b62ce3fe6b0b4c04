import type { BaseIssue } from 'valibot';
import { foundWords } from '../../drafting/read/found.ts';
import { nearestSpelling } from '../../drafting/spelling.ts';
import { type Key, type Message, message, type Value } from '../../words/message.ts';
import type { Fault, Place } from './fault.ts';

type Issue = BaseIssue<unknown>;

/** What the form of a file does not allow, as sentences. The schemas are made by `fields` and its kin, whose messages are keys. */
export function faultsOf(issues: readonly Issue[], around: Place = []): readonly Fault[] {
  return issues.flatMap((issue) => {
    const at = [...around, ...(issue.path ?? []).map(({ key }) => (typeof key === 'number' ? key : String(key)))];
    const inner = issue.type === 'union' ? issuesInside(issue) : [];
    return inner.length > 0 ? faultsOf(inner, at) : [{ at, message: sentenceFor(issue) }];
  });
}

/** Of an object that fits none of several forms: what is wrong inside the form whose field it has. */
function issuesInside({ issues }: Issue): readonly Issue[] {
  const inside = (issues ?? []).filter(({ type }) => type !== 'strict_object');
  const deeper = inside.filter(({ path }) => path !== undefined);
  return deeper.length > 0 ? deeper : inside;
}

function sentenceFor(issue: Issue): Message {
  const [first = '', ...rest] = issue.message.split(' ');
  if (first === 'missing') return message('author.missing', { wanted: wantedWords(rest[0] ?? '') });
  if (first === 'unknown') return unknownField(String(issue.path?.at(-1)?.key), rest);
  const options = [...(issue.expected ?? '').matchAll(/"([^"]+)"/g)].map(([, option]) => option ?? '');
  if (options.length > 1) return choice(issue, options);
  return message('read.wrong', { wanted: wantedWords(first), found: { said: foundWords(issue.input) } });
}

function unknownField(field: string, known: readonly string[]): Message {
  // A comma in braces begins another field.
  if (/^\d/.test(field)) return message('author.no-field-comma');
  const meant = nearestSpelling(field.slice(0, 60), known);
  const fields = { known: known.join(', ') };
  return meant === null ? message('author.no-field', fields) : message('author.no-field-meant', { ...fields, meant });
}

function choice(issue: Issue, options: readonly string[]): Message {
  const values = {
    known: options.join(', '),
    found: { said: foundWords(issue.input) },
    wanted: wantedWords(issue.message),
  };
  const meant = typeof issue.input === 'string' ? nearestSpelling(issue.input.slice(0, 60), options) : null;
  return meant === null ? message('author.choice', values) : message('author.choice-meant', { ...values, meant });
}

function wantedWords(key: string): Value {
  // Every message of these schemas is such a key; `fields.ts` sees to it by its types.
  return { said: { key: key as Key, values: {} } };
}
