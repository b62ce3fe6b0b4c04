import { type Message, message } from '../../words/message.ts';
import { formOf, formsOfVerb, type HalfStep } from '../form.ts';
import { wantedWords } from '../kinds.ts';
import { ReadStep } from '../known-step.ts';
import { isReserved } from '../name.ts';
import { isRecord } from '../record.ts';
import { nearestSpelling } from '../spelling.ts';
import type { Step } from '../step.ts';
import { type Form, forms } from '../verbs.ts';
import { readerOf } from './blank.ts';
import type { Fault, Reader } from './fault.ts';
import { foundWords } from './found.ts';
import { type Entry, type Layout, readRecord } from './record.ts';
import { readName, readWhere } from './values.ts';

/** Reads one step. What is returned is a step only where no fault was added. */
export function readStep(value: unknown, faults: Fault[]): Step {
  if (!isRecord(value)) {
    faults.push({ at: '', message: message('read.not-step', { found: { said: foundWords(value) } }) });
    return value as Step;
  }
  const half: HalfStep = value;
  const form = formOf(half);
  if (form) return readRecord(value, '', layoutFor(form), faults) as unknown as Step;
  faults.push({ at: 'verb', message: strangeVerb(half.verb) });
  return value as unknown as Step;
}

const readOwnName: Reader = (value, at, faults) => {
  if (typeof value === 'string' && isReserved(value)) {
    faults.push({ at, message: message('problem.name-reserved', { name: value }) });
    return value;
  }
  return readName(message('wanted.name'))(value, at, faults);
};

const layouts = new Map<Form, Layout>();

function layoutFor(form: Form): Layout {
  const known = layouts.get(form);
  if (known) return known;
  const own = form.fields.map(
    ({ field, blank, optional }): Entry => ({ field, read: readerOf(blank), wanted: wantedWords(blank), optional }),
  );
  const name = message('wanted.name');
  const entries: readonly Entry[] = [
    { field: 'verb', read: readWhere((verb) => verb === form.verb, name), wanted: name, optional: false },
    { field: 'name', read: readOwnName, wanted: name, optional: false },
    { field: 'answers', read: readName(message('wanted.target')), wanted: name, optional: true },
    ...own,
  ];
  const layout = {
    entries,
    strange: strangeIn(form),
    empty: () => new ReadStep() as unknown as Record<string, unknown>,
  };
  layouts.set(form, layout);
  return layout;
}

/** What to say of a field that the form has no blank for: that another form has it, or the nearest spelling. */
function strangeIn(form: Form): (field: string) => Message {
  return (field) => {
    const other = formsOfVerb(form.verb).find((one) => one.fields.some((own) => own.field === field));
    if (other)
      return message('read.other-form', { verb: form.verb, fields: fieldList(form), others: fieldList(other) });
    const known = ['name', 'answers', ...form.fields.map((own) => own.field)];
    const meant = nearestSpelling(field, known);
    if (meant !== null) return message('read.unknown-meant', { meant });
    return message('read.unknown-in', { verb: form.verb, fields: fieldList(form) });
  };
}

const fieldList = (form: Form): string => form.fields.map((own) => own.field).join(', ');

function strangeVerb(verb: unknown): Message {
  const verbs = [...new Set(forms.map((form) => form.verb))];
  if (typeof verb !== 'string') {
    return message('read.verb', { found: { said: foundWords(verb) }, verbs: verbs.join(', ') });
  }
  const meant = nearestSpelling(verb, verbs);
  const found = { said: foundWords(verb) };
  if (meant !== null) return message('read.verb-meant', { found, meant });
  return message('read.verb', { found, verbs: verbs.join(', ') });
}
