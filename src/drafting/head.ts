import { type Message, message } from '../words/message.ts';
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
export interface Head extends KnownStep {
  readonly form: Form;
}

/**
 * Reads the head of a step; fails where it is no step, its verb is unknown, or its name cannot be given. `whyTaken` says why
 * a name, well-formed, is another's already; null where it is not.
 */
export function headOf(step: unknown, whyTaken: (name: Name) => Message | null): Outcome<Head> {
  if (!isRecord(step)) return failed(null, message('problem.not-a-step'));
  const known = knownStep(step as HalfStep);
  const whyNot = known.nameable ? whyTaken(known.name) : whyNotForm(known.name);
  if (whyNot) return failed('name', whyNot);
  if (hasForm(known)) return made(known);
  const word = wordOf(known.step.verb);
  return failed(
    'verb',
    word === '' ? message('problem.verb-missing') : message('problem.unknown-verb', { verb: word }),
  );
}

function hasForm(known: KnownStep): known is Head {
  return known.form !== null;
}

/** Why something cannot be the name of a new object; null when it can. `earlier` maps names taken to their steps. */
export function whyNotName(name: unknown, givens: Givens, earlier: ReadonlyMap<Name, number>): Message | null {
  return whyNotForm(name) ?? whyTaken(name as Name, givens, earlier);
}

/** Why something cannot be a name at all. */
function whyNotForm(name: unknown): Message | null {
  if (name === undefined || name === '') return message('problem.name-missing');
  if (!isName(name)) return message('problem.name-form', { name: wordOf(name) });
  return isReserved(name) ? message('problem.name-reserved', { name }) : null;
}

function whyTaken(name: Name, givens: Givens, earlier: ReadonlyMap<Name, number>): Message | null {
  if (givens.shapes.has(name) || givens.measures.has(name)) return message('problem.name-given', { name });
  const taken = earlier.get(name);
  return taken === undefined ? null : message('problem.name-twice', { name, step: taken + 1 });
}
