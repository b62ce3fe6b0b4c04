import { safeParse } from 'valibot';
import { readSteps } from '../drafting/read.ts';
import { isRecord } from '../drafting/record.ts';
import type { Step } from '../drafting/step.ts';
import { type Fault, placeOf } from '../grader/reading/fault.ts';
import { faultsOf } from '../grader/reading/form-faults.ts';
import { strangeKeys } from '../grader/reading/strange-keys.ts';
import { foreignFault } from './foreign.ts';
import { HAND_IN_FORMAT, HAND_IN_VERSION, type HandIn } from './hand-in.ts';
import { handInForm } from './hand-in-form.ts';
import { readJson } from './json.ts';
import { readRecipe } from './read-recipe.ts';

export type HandInReading =
  | { readonly ok: true; readonly handIn: HandIn }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/** Reads a hand-in from the text of its file. */
export function readHandIn(text: string): HandInReading {
  const parsed = readJson(text);
  return parsed.ok ? readHandInJson(parsed.json) : { ok: false, faults: [{ at: [], message: parsed.message }] };
}

/**
 * Reads a hand-in from parsed JSON, and reports everything that does not fit. Whether it fits the exercise it names is
 * another question: see `orderFrom`.
 */
export function readHandInJson(json: unknown): HandInReading {
  const foreign = foreignFault(json, { format: HAND_IN_FORMAT, version: HAND_IN_VERSION, called: 'kind.hand-in' });
  if (foreign !== null) return { ok: false, faults: [foreign] };
  const parsed = safeParse(handInForm, json, { abortPipeEarly: true });
  const steps = stepsOf(json);
  const recipe = readRecipe(json);
  const faults = [
    ...strangeKeys(json, ['steps']),
    ...(parsed.success ? [] : faultsOf(parsed.issues)),
    ...recipe.faults,
    ...steps.faults,
  ];
  if (!parsed.success || recipe.recipe === null || faults.length > 0) return { ok: false, faults };
  const { format: _format, version: _version, ...form } = parsed.output;
  return { ok: true, handIn: { ...form, order: recipe.recipe, steps: steps.steps } };
}

function stepsOf(json: unknown): { readonly steps: readonly Step[]; readonly faults: readonly Fault[] } {
  const list = isRecord(json) ? json['steps'] : undefined;
  if (!Array.isArray(list)) return { steps: [], faults: [] };
  const read = readSteps(list);
  if (read.ok) return { steps: read.steps, faults: [] };
  return {
    steps: [],
    faults: read.errors.map((error) => ({ at: ['steps', ...placeOf(error.path)], message: error.message })),
  };
}
