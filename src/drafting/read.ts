import { type Message, message } from '../words/message.ts';
import { DRAFT_LENGTH } from './limits.ts';
import { isName } from './name.ts';
import type { Fault } from './read/fault.ts';
import { foundWords } from './read/found.ts';
import { kept, readBefore } from './read/shared.ts';
import { readStep } from './read/step.ts';
import { isRecord } from './record.ts';
import type { Name, Step } from './step.ts';

/** What in a file does not fit. `path` is where, from the list of steps: `[2].distance`; empty for the list itself. */
export interface ReadError {
  readonly path: string;
  readonly message: Message;
}

export type Read =
  | { readonly ok: true; readonly steps: readonly Step[] }
  | { readonly ok: false; readonly errors: readonly ReadError[] };

/**
 * Reads the steps of a draft from JSON. It looks at their form only, and that no name is given twice: whether names are
 * on the sheet and expressions can be understood comes out when the draft is replayed. The steps returned have
 * their fields in the order of the language, so that writing and reading them again changes nothing; steps that say the
 * same may be one object.
 */
export function readSteps(json: unknown): Read {
  if (!Array.isArray(json)) return refused(message('read.not-list', { found: { said: foundWords(json) } }));
  if (json.length > DRAFT_LENGTH) return refused(message('read.too-many', { count: json.length, limit: DRAFT_LENGTH }));
  const steps: Step[] = [];
  const errors: ReadError[] = [];
  const earlier = new Map<Name, number>();
  for (let index = 0; index < json.length; index++) {
    const faults: Fault[] = [];
    const step = readBefore(json[index]) ?? readStep(json[index], faults);
    const name = nameOf(json[index]);
    const taken = name === null ? undefined : earlier.get(name);
    if (taken !== undefined)
      faults.push({ at: 'name', message: message('problem.name-twice', { name: name ?? '', step: taken + 1 }) });
    else if (name !== null) earlier.set(name, index);
    steps.push(step);
    errors.push(...faults.map((fault) => located(fault, index, name)));
  }
  return errors.length > 0 ? { ok: false, errors } : { ok: true, steps: kept(steps) };
}

const refused = (why: Message): Read => ({ ok: false, errors: [{ path: '', message: why }] });

function nameOf(step: unknown): Name | null {
  const { name } = isRecord(step) ? step : {};
  return isName(name) ? name : null;
}

/** The fault with its place: the step by number and name, and the field. */
function located({ at, message: said }: Fault, index: number, name: Name | null): ReadError {
  const path = at === '' ? `[${index}]` : `[${index}].${at}`;
  const step =
    name === null ? message('read.step', { step: index + 1 }) : message('read.step-named', { step: index + 1, name });
  const whole =
    at === ''
      ? message('read.in-step', { step: { said: step }, said: { sentence: said } })
      : message('read.in-field', { step: { said: step }, field: at, said: { sentence: said } });
  return { path, message: whole };
}
