import { safeParse } from 'valibot';
import { foundWords } from '../drafting/read/found.ts';
import { readSteps } from '../drafting/read.ts';
import { isRecord } from '../drafting/record.ts';
import { replay } from '../drafting/replay.ts';
import type { Step } from '../drafting/step.ts';
import { message } from '../words/message.ts';
import { checkFaults } from './authoring/check-faults.ts';
import { fileNameFaults } from './authoring/file-name-faults.ts';
import { exerciseForm } from './authoring/form.ts';
import { givenFaults, givenGroundFaults } from './authoring/given-faults.ts';
import { hintFaults } from './authoring/hint-faults.ts';
import { learnerFaults } from './authoring/learner-faults.ts';
import { misreadingFaults } from './authoring/misreading-faults.ts';
import { orderFaults } from './authoring/order-faults.ts';
import { proofFaults } from './authoring/proof.ts';
import { referenceFaults, unreadChecks } from './authoring/reference-faults.ts';
import { targetFaults } from './authoring/target-faults.ts';
import { textFaults } from './authoring/text-faults.ts';
import { wornFaults } from './authoring/worn-faults.ts';
import type { Exercise } from './exercise.ts';
import { layOut } from './lay-out.ts';
import { lessons } from './lessons.ts';
import { orderFor } from './order-for.ts';
import { withoutEchoes } from './reading/echoes.ts';
import { type Fault, type Place, placeOf } from './reading/fault.ts';
import { faultsOf } from './reading/form-faults.ts';
import { strangeKeys } from './reading/strange-keys.ts';
import { unknownName } from './reading/unknown.ts';

export type ExerciseReading =
  | { readonly ok: true; readonly exercise: Exercise }
  | { readonly ok: false; readonly faults: readonly Fault[] };

/**
 * Reads an exercise, already parsed from YAML; `id` is the name of its file. Reports whatever an author has to mend:
 * first the form of the file, then names, texts and the order, then what only a replay shows: whether the reference
 * answers every target, and whether every misreading comes out wrong on other people's orders too.
 */
export function readExercise(id: string, data: unknown): ExerciseReading {
  const formed = readForm(id, data);
  if (!formed.ok) return formed;
  const { exercise } = formed;
  for (const stage of [nameFaults, groundFaults]) {
    const faults = stage(exercise);
    if (faults.length > 0) return { ok: false, faults };
  }
  return formed;
}

function readForm(id: string, data: unknown): ExerciseReading {
  // A list would only be said to lack every field.
  if (!isRecord(data))
    return {
      ok: false,
      faults: [{ at: [], message: message('author.not-exercise', { found: { said: foundWords(data) } }) }],
    };
  const parsed = safeParse(exerciseForm, data);
  const { read, faults } = readLists(data);
  const strange = strangeKeys(data, ['given', 'reference', 'instead', 'first']);
  const all = withoutEchoes([
    ...strange,
    ...(parsed.success ? [] : faultsOf(parsed.issues)),
    ...hintFaults(data),
    ...faults,
  ]);
  if (!parsed.success || all.length > 0) return { ok: false, faults: all };
  const { given: written, ...form } = parsed.output;
  const misreadings = form.misreadings.map(({ first, ...one }, index) => ({
    ...one,
    ...(first === undefined ? {} : { first: read(['misreadings', index, 'first']) }),
    instead: read(['misreadings', index, 'instead']),
  }));
  const given = written === undefined ? {} : { given: read(['given']) };
  return { ok: true, exercise: { id, ...form, ...given, reference: read(['reference']), misreadings } };
}

/** Reads every list of steps there is, wherever the rest of the file is sound or not. */
function readLists(data: unknown) {
  const lists = new Map<string, readonly Step[]>();
  const faults: Fault[] = [];
  for (const { at, steps } of stepLists(data)) {
    const read = readSteps(steps);
    if (read.ok) lists.set(JSON.stringify(at), read.steps);
    else
      faults.push(...read.errors.map(({ path, message: said }) => ({ at: [...at, ...placeOf(path)], message: said })));
  }
  return { read: (at: Place): readonly Step[] => lists.get(JSON.stringify(at)) ?? [], faults };
}

function stepLists(data: unknown): readonly { readonly at: Place; readonly steps: unknown }[] {
  if (!isRecord(data)) return [];
  const misreadings: readonly unknown[] = Array.isArray(data['misreadings']) ? data['misreadings'] : [];
  return [
    { at: ['given'], steps: data['given'] },
    { at: ['reference'], steps: data['reference'] },
    ...misreadings.flatMap((one, index) =>
      isRecord(one)
        ? ['instead', 'first'].map((field) => ({ at: ['misreadings', index, field], steps: one[field] }))
        : [],
    ),
  ].filter(({ steps }) => Array.isArray(steps));
}

/** What can be said without laying anything on the table. */
function nameFaults(exercise: Exercise): readonly Fault[] {
  const lesson = lessons.includes(exercise.lesson)
    ? []
    : [{ at: ['lesson'], message: unknownName('what.lesson', exercise.lesson, lessons) }];
  return [
    ...fileNameFaults(exercise.id),
    ...lesson,
    ...orderFaults(exercise),
    ...givenFaults(exercise),
    ...targetFaults(exercise),
    ...misreadingFaults(exercise),
  ];
}

/** What shows when the exercise's own order is on the table, and then other people's. */
function groundFaults(exercise: Exercise): readonly Fault[] {
  const order = orderFor(exercise, 'author');
  const ungiven = givenGroundFaults(exercise, [order]);
  if (ungiven.length > 0) return ungiven;
  const dealt = layOut(exercise, order);
  if (!dealt.ok) return [{ at: [], message: message('author.order', { why: { sentence: dealt.message } }) }];
  const { givens } = dealt;
  const reference = replay(givens, exercise.reference);
  const shown = exercise.shows.flatMap((name, index) =>
    givens.shapes.has(name)
      ? []
      : [{ at: ['shows', index], message: unknownName('what.block-object', name, givens.shapes.keys()) }],
  );
  const broken = referenceFaults(exercise, reference);
  const faults = [
    ...shown,
    ...textFaults(exercise, dealt),
    ...broken,
    // Of a reference that stops half-way, checks would only be said to name what is not there.
    ...(broken.length > 0
      ? []
      : [
          ...(shown.length > 0 ? [] : learnerFaults(exercise, givens)),
          ...checkFaults(exercise, givens, reference),
          ...wornFaults(exercise, reference),
        ]),
  ];
  if (faults.length > 0) return faults;
  const unread = unreadChecks(exercise, reference);
  return unread.length > 0 ? unread : proofFaults(exercise, order);
}
