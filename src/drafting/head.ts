import { type Message, message } from '../words/message.ts';
import { formOf, type HalfStep } from './form.ts';
import { isName, isReserved } from './name.ts';
import { failed, made, type Outcome } from './outcome.ts';
import { isRecord } from './record.ts';
import type { Givens } from './sheet.ts';
import type { Name } from './step.ts';
import type { Form } from './verbs.ts';
import { wordOf } from './word-of.ts';

/** What a step is before its blanks are looked at: its name, and the form it is written in. */
export interface Head {
  readonly step: HalfStep;
  readonly name: Name;
  readonly form: Form;
}

/** The forms that steps were found to be written in: a draft is replayed many times, and its steps are never changed in place. */
const written = new WeakMap<HalfStep, Form>();

function formOnce(step: HalfStep): Form | null {
  const form = written.get(step) ?? formOf(step);
  if (form) written.set(step, form);
  return form;
}

/** Reads the head of a step; fails where it is no step, its verb is unknown, or its name cannot be given. */
export function headOf(step: unknown, givens: Givens, earlier: ReadonlyMap<Name, number>): Outcome<Head> {
  if (!isRecord(step)) return failed(null, message('problem.not-a-step'));
  const half: HalfStep = step;
  const { name, verb } = half;
  const whyNot = whyNotName(name, givens, earlier);
  if (whyNot) return failed('name', whyNot);
  const form = formOnce(half);
  if (form) return made({ step: half, name: name as Name, form });
  const word = wordOf(verb);
  return failed(
    'verb',
    word === '' ? message('problem.verb-missing') : message('problem.unknown-verb', { verb: word }),
  );
}

/** Why something cannot be the name of a new object; null when it can. `earlier` maps names taken to their steps. */
export function whyNotName(name: unknown, givens: Givens, earlier: ReadonlyMap<Name, number>): Message | null {
  if (name === undefined || name === '') return message('problem.name-missing');
  if (!isName(name)) return message('problem.name-form', { name: wordOf(name) });
  if (isReserved(name)) return message('problem.name-reserved', { name });
  if (givens.shapes.has(name) || givens.measures.has(name)) return message('problem.name-given', { name });
  const taken = earlier.get(name);
  return taken === undefined ? null : message('problem.name-twice', { name, step: taken + 1 });
}
