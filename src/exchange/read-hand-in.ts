import { safeParse } from 'valibot';
import { foundWords } from '../drafting/read/found.ts';
import { readSteps } from '../drafting/read.ts';
import { isRecord } from '../drafting/record.ts';
import type { Step } from '../drafting/step.ts';
import { type Fault, placeOf } from '../grader/reading/fault.ts';
import { faultsOf } from '../grader/reading/form-faults.ts';
import { strangeKeys } from '../grader/reading/strange-keys.ts';
import { type Message, message } from '../words/message.ts';
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
  return parsed.ok ? readHandInJson(parsed.json) : refused(parsed.message);
}

/**
 * Reads a hand-in from parsed JSON, and reports everything that does not fit. Whether it fits the exercise it names is
 * another question: see `orderFrom`.
 */
export function readHandInJson(json: unknown): HandInReading {
  const foreign = whyForeign(json);
  if (foreign !== null) return foreign;
  const parsed = safeParse(handInForm, json);
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

function refused(said: Message, at: Fault['at'] = []): HandInReading {
  return { ok: false, faults: [{ at, message: said }] };
}

/** Files of other programs and of later versions are refused as a whole, before anything in them is found fault with. */
function whyForeign(json: unknown): HandInReading | null {
  const format = isRecord(json) ? json['format'] : undefined;
  if (format !== HAND_IN_FORMAT) return refused(message('files.not-hand-in', { found: { said: foundWords(format) } }));
  const version = isRecord(json) ? json['version'] : undefined;
  if (version === HAND_IN_VERSION) return null;
  if (typeof version === 'number' && Number.isInteger(version) && version > HAND_IN_VERSION) {
    return refused(message('files.version-newer', { found: version, known: HAND_IN_VERSION }));
  }
  return refused(message('files.version', { found: { said: foundWords(version) }, known: HAND_IN_VERSION }), [
    'version',
  ]);
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
