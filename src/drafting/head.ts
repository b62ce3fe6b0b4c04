import { type Message, message } from '../words/message.ts';
import type { Construction } from './construction.ts';
import type { HalfStep } from './form.ts';
import { type KnownStep, knownStep } from './known-step.ts';
import { isName, isReserved } from './name.ts';
import { failed, made, type Outcome } from './outcome.ts';
import { isRecord } from './record.ts';
import type { Givens } from './sheet.ts';
import type { Name } from './step.ts';
import type { Form } from './verbs.ts';
import { wordOf } from './word-of.ts';

/** What a step is before its blanks are looked at: its name, the form it is written in, and what it does. */
export interface Head {
  readonly step: HalfStep;
  readonly name: Name;
  readonly form: Form;
  readonly construction: Construction | null;
}

/** Reads the head of a step; fails where it is no step, its verb is unknown, or its name cannot be given. */
export function headOf(step: unknown, givens: Givens, earlier: ReadonlyMap<Name, number>): Outcome<Head> {
  if (!isRecord(step)) return failed(null, message('problem.not-a-step'));
  const half: HalfStep = step;
  const { name, verb } = half;
  const known = knownStep(half);
  const whyNot = whyNotOwnName(known, name, givens, earlier);
  if (whyNot) return failed('name', whyNot);
  const { form, construction } = known;
  if (form) return made({ step: half, name: name as Name, form, construction });
  const word = wordOf(verb);
  return failed(
    'verb',
    word === '' ? message('problem.verb-missing') : message('problem.unknown-verb', { verb: word }),
  );
}

function whyNotOwnName(
  { nameable }: KnownStep,
  name: unknown,
  givens: Givens,
  earlier: ReadonlyMap<Name, number>,
): Message | null {
  return nameable ? whyTaken(name as Name, givens, earlier) : whyNotName(name, givens, earlier);
}

/** Why something cannot be the name of a new object; null when it can. `earlier` maps names taken to their steps. */
export function whyNotName(name: unknown, givens: Givens, earlier: ReadonlyMap<Name, number>): Message | null {
  if (name === undefined || name === '') return message('problem.name-missing');
  if (!isName(name)) return message('problem.name-form', { name: wordOf(name) });
  if (isReserved(name)) return message('problem.name-reserved', { name });
  return whyTaken(name, givens, earlier);
}

function whyTaken(name: Name, givens: Givens, earlier: ReadonlyMap<Name, number>): Message | null {
  if (givens.shapes.has(name) || givens.measures.has(name)) return message('problem.name-given', { name });
  const taken = earlier.get(name);
  return taken === undefined ? null : message('problem.name-twice', { name, step: taken + 1 });
}
