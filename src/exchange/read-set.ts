import { safeParse } from 'valibot';
import type { Fault } from '../grader/reading/fault.ts';
import { faultsOf } from '../grader/reading/form-faults.ts';
import { strangeKeys } from '../grader/reading/strange-keys.ts';
import { message } from '../words/message.ts';
import { foreignFault } from './foreign.ts';
import { houseFaults } from './house-faults.ts';
import { readJson } from './json.ts';
import { personFaults } from './person-faults.ts';
import { type ProblemSet, SET_FORMAT, SET_VERSION } from './set.ts';
import { setForm, type unfinishedSetForm } from './set-form.ts';
import { strangeExercise } from './strange-exercise.ts';

export type SetReading =
  | { readonly ok: true; readonly set: ProblemSet }
  | { readonly ok: false; readonly faults: readonly Fault[] };

type SetForm = typeof setForm | typeof unfinishedSetForm;

/** Reads a problem set from the text of its file. `exercises` are the names of those there are; `form` may be that of a set still being made. */
export function readSet(text: string, exercises: readonly string[], form: SetForm = setForm): SetReading {
  const parsed = readJson(text);
  if (!parsed.ok) return { ok: false, faults: [{ at: [], message: parsed.message }] };
  return readSetJson(parsed.json, exercises, form);
}

/** Reads a problem set from parsed JSON, and reports everything that does not fit. */
export function readSetJson(json: unknown, exercises: readonly string[], form: SetForm = setForm): SetReading {
  const foreign = foreignFault(json, { format: SET_FORMAT, version: SET_VERSION, called: 'kind.problem-set' });
  if (foreign !== null) return { ok: false, faults: [foreign] };
  const parsed = safeParse(form, json, { abortPipeEarly: true });
  const faults = [...strangeKeys(json), ...(parsed.success ? [] : faultsOf(parsed.issues))];
  if (!parsed.success || faults.length > 0) return { ok: false, faults };
  const { format: _format, version: _version, ...set } = parsed.output;
  const unfit = [...exerciseFaults(set, exercises), ...figureFaults(set), ...houseFaults(set.house, ['house'])];
  return unfit.length === 0 ? { ok: true, set } : { ok: false, faults: unfit };
}

function exerciseFaults(set: ProblemSet, known: readonly string[]): readonly Fault[] {
  const names = set.exercises.map(({ exercise }) => exercise);
  return names.flatMap((name, index): readonly Fault[] => {
    const at = ['exercises', index, 'exercise'];
    if (!known.includes(name)) return [{ at, message: strangeExercise(name, known) }];
    if (names.indexOf(name) === index) return [];
    return [{ at, message: message('files.set-twice', { exercise: name, first: names.indexOf(name) + 1 }) }];
  });
}

function figureFaults({ figures }: ProblemSet): readonly Fault[] {
  return typeof figures === 'object' && 'named' in figures ? personFaults(figures.named, ['figures', 'named']) : [];
}
