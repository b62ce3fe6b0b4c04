import { type Key, message } from '../words/message.ts';
import { formatOf, type Reader, say } from '../words/say.ts';
import { formById, formOf, type HalfStep } from './form.ts';
import { wantedWords } from './kinds.ts';
import type { Quantity } from './quantity.ts';
import { fillText } from './sentence/fill.ts';
import type { Numbers, Speaker } from './sentence/speaker.ts';
import type { Step } from './step.ts';
import type { Field, Form, FormId } from './verbs.ts';

/** Words of a step's sentence, or one of its blanks. */
export type SentencePart =
  | { readonly kind: 'text'; readonly text: string }
  | {
      readonly kind: 'blank';
      readonly field: string;
      /** What fills it, in words; where it is empty, `…`, and nothing at all where it may stay empty. */
      readonly text: string;
      readonly filled: boolean;
      readonly optional: boolean;
      /** What it takes, in words: “a line or a curve”. */
      readonly wanted: string;
    };

/** What a sentence may be told besides the step: the measures its expressions name, and the form where it is not plain yet. */
export interface Telling {
  readonly measures?: ReadonlyMap<string, Quantity>;
  readonly form?: FormId;
  /** As typed, where nothing is said. */
  readonly numbers?: Numbers;
}

/** A step as a drafting instruction in the reader's language and unit. With the measures, expressions show their value. */
export function sentenceOf(step: Step, reader: Reader, measures?: ReadonlyMap<string, Quantity>): string {
  return toldOf(step, reader, measures ? { measures } : {});
}

/** A step that an author wrote, as a drafting instruction with the values of its expressions: every length in it is in the reader's unit. */
export function instructionOf(step: Step, reader: Reader, measures: ReadonlyMap<string, Quantity>): string {
  return toldOf(step, reader, { measures, numbers: 'in-reader-unit' });
}

function toldOf(step: Step, reader: Reader, telling: Telling): string {
  return sentenceParts(step as unknown as HalfStep, reader, telling)
    .map((part) => part.text)
    .join('');
}

/** The sentence of a step, half filled or whole, in pieces: its words, and its blanks where they stand among them. */
export function sentenceParts(step: HalfStep, reader: Reader, telling: Telling = {}): readonly SentencePart[] {
  const form = telling.form ? formById(telling.form) : formOf(step);
  // Is there no such verb?
  if (!form) return [{ kind: 'text', text: say(message('fill.missing'), reader) }];
  const speaker: Speaker = { reader, measures: telling.measures ?? null, numbers: telling.numbers ?? 'as-typed' };
  const names = form.fields.map((own) => own.field);
  return laidOut(`step.${form.id}`, names, reader, (field) => blankParts(form, field, step, speaker));
}

/** A message of the catalogue in pieces, each of the values it names put as its own parts. */
function laidOut(
  key: Key,
  values: readonly string[],
  reader: Reader,
  partsOf: (value: string) => readonly SentencePart[],
): readonly SentencePart[] {
  const slots: Record<string, Slot> = Object.fromEntries(values.map((slot) => [slot, { slot }]));
  return formatOf(key, reader)
    .formatToParts<Slot>(slots)
    .flatMap(({ value }): readonly SentencePart[] =>
      typeof value === 'string' ? [{ kind: 'text', text: value }] : partsOf((value as Slot).slot),
    );
}

/** Stands for a value when a message is taken apart. */
interface Slot {
  readonly slot: string;
}

function blankParts(form: Form, name: string, step: HalfStep, speaker: Speaker): readonly SentencePart[] {
  const field = form.fields.find((own) => own.field === name);
  if (!field) return [];
  const text = fillText(field, step[name], speaker);
  const { reader } = speaker;
  const blank: SentencePart = {
    kind: 'blank',
    field: name,
    text: text ?? (field.optional ? '' : say(message('fill.missing'), reader)),
    filled: text !== null,
    optional: field.optional,
    wanted: say(wantedWords(field.blank), reader),
  };
  return text !== null && field.optional ? laidOut(joinOf(form, field), ['value'], reader, () => [blank]) : [blank];
}

/** How an optional blank joins the sentence. */
function joinOf(form: Form, { field }: Field): Key {
  if (form.id === 'tape' && (field === 'from' || field === 'to')) return `join.${field}`;
  return field === 'near' ? 'join.taking' : 'join.clause';
}
