import type { HalfStep } from './form.ts';
import { knownStep } from './known-step.ts';
import { isName } from './name.ts';
import type { Givens } from './sheet.ts';
import type { Name, Step } from './step.ts';

/** What a draft does, whatever its things are called. Two drafts of one gist make the same on the same table, for the same targets. */
export interface Gist {
  /** Another number for every other gist. */
  readonly number: number;
  /** What the draft calls the things it makes: on a table that has one of these names already, nothing is known from the gist. */
  readonly names: ReadonlySet<Name>;
}

const found = new WeakMap<readonly Step[], Gist | null>();

/** The gist of a draft, looked for once; null where a name is given twice or cannot be given, or where a step is not understood. */
export function gistOf(steps: readonly Step[]): Gist | null {
  const known = found.get(steps);
  if (known !== undefined) return known;
  const gist = readGist(steps);
  found.set(steps, gist);
  return gist;
}

/** Whether a draft calls something as a thing is called that lies there already. */
export function namesGiven({ names }: Gist, { shapes, measures }: Givens): boolean {
  for (const given of [shapes, measures]) for (const name of given.keys()) if (names.has(name)) return true;
  return false;
}

function readGist(steps: readonly Step[]): Gist | null {
  const made = new Map<Name, number>();
  let text = '';
  for (const step of steps as readonly unknown[] as readonly HalfStep[]) {
    const line = lineOf(step, made);
    const name = step.name as Name;
    if (line === null || made.has(name)) return null;
    text += line;
    made.set(name, made.size);
  }
  return { number: numberOf(text), names: new Set(made.keys()) };
}

/** What a step does and answers: what an earlier one made goes by its place, and anything else by its name, which begins with a letter. */
function lineOf(step: HalfStep, made: ReadonlyMap<Name, number>): string | null {
  const deed = deedOf(step, made);
  if (deed === null || !knownStep(step).nameable) return null;
  return typeof step.answers === 'string' ? `${deed}=${JSON.stringify(step.answers)}\n` : `${deed}\n`;
}

/**
 * What a step does, without its own name and target: two steps of one deed make the same from the same things. A thing goes by
 * what it is called here, and by its own name where it is not called anything. Null where that cannot be told.
 */
export function deedOf(step: HalfStep, called: ReadonlyMap<Name, number | Name>): string | null {
  const { construction } = knownStep(step);
  if (construction === null) return null;
  let deed = construction.pattern;
  for (const name of construction.uses) {
    const place = called.get(name);
    if (place === undefined && !isName(name)) return null;
    deed += ` ${place ?? name}`;
  }
  return deed;
}

const numbers = new Map<string, number>();
let last = 0;
let kept = 0;

/** So many characters of gists are kept, and then all are let go; a gist that comes again then has another number. */
const KEPT = 4_000_000;

function numberOf(text: string): number {
  const known = numbers.get(text);
  if (known !== undefined) return known;
  if (kept > KEPT) {
    numbers.clear();
    kept = 0;
  }
  last += 1;
  kept += text.length;
  numbers.set(text, last);
  return last;
}
