import type { Name } from '../../drafting/step.ts';
import { tidied } from '../../exchange/notes/given-mark.ts';
import { readSet } from '../../exchange/read-set.ts';
import { refusalOf } from '../../exchange/refusal.ts';
import type { ProblemSet, SetExercise } from '../../exchange/set.ts';
import { unfinishedSetForm } from '../../exchange/set-form.ts';
import { setJson } from '../../exchange/write-set.ts';
import type { Message } from '../../words/message.ts';

/** A set while it is made: its title may be empty yet, and it may have no exercises. */
export type Sheet = ProblemSet;

/** Changes the sheet as it is by then: two changes of one moment do not undo each other. */
export type Change = (update: (now: Sheet) => Sheet) => void;

/** An empty sheet. `seed` decides the figures it will deal. */
export function freshSheet(title: string, seed: string): Sheet {
  return {
    title,
    note: '',
    exercises: [],
    figures: 'stated',
    seed,
    strictness: 'workroom',
    house: {},
    feedback: 'place',
    checks: null,
    hints: true,
    due: null,
  };
}

/** Puts an exercise at the end of the sheet, or takes it off. */
export function toggled(sheet: Sheet, { exercise, marks }: SetExercise): Sheet {
  const others = without(sheet, exercise);
  return others.exercises.length < sheet.exercises.length
    ? others
    : { ...sheet, exercises: [...sheet.exercises, { exercise, marks }] };
}

export function without(sheet: Sheet, exercise: Name): Sheet {
  return { ...sheet, exercises: sheet.exercises.filter((one) => one.exercise !== exercise) };
}

/** Moves an exercise by some places; it stops at either end. */
export function moved(sheet: Sheet, exercise: Name, by: number): Sheet {
  const from = sheet.exercises.findIndex((one) => one.exercise === exercise);
  const one = sheet.exercises[from];
  if (!one) return sheet;
  const others = sheet.exercises.toSpliced(from, 1);
  return { ...sheet, exercises: others.toSpliced(Math.max(0, from + by), 0, one) };
}

export function worth(sheet: Sheet, exercise: Name, marks: number): Sheet {
  return { ...sheet, exercises: sheet.exercises.map((one) => (one.exercise === exercise ? { ...one, marks } : one)) };
}

/** Sets a house rule, or with null leaves it as each exercise has it. */
export function ruled(sheet: Sheet, rule: Name, choice: string | null): Sheet {
  const { [rule]: _before, ...others } = sheet.house;
  return { ...sheet, house: choice === null ? others : { ...others, [rule]: choice } };
}

/** Without house rules that none of its exercises has: they would be handed out to no purpose. */
export function withoutStrayRules(sheet: Sheet, rules: readonly Name[]): Sheet {
  return { ...sheet, house: Object.fromEntries(Object.entries(sheet.house).filter(([rule]) => rules.includes(rule))) };
}

/** With title and note as a file takes them: what is pasted from elsewhere may hold tabs, and a set with these would be refused. */
export function asWritten(sheet: Sheet): Sheet {
  return { ...sheet, title: tidied(sheet.title).replaceAll('\n', ' '), note: tidied(sheet.note) };
}

export function printSheet(sheet: Sheet): string {
  return JSON.stringify(setJson(sheet));
}

/** A sheet that was kept and cannot be read any more: the text as it was kept, and why. */
export interface UnreadSheet {
  readonly text: string;
  readonly why: Message;
}

/** What was kept of a sheet; null where nothing was. */
export function takeUpSheet(text: string | null, exercises: readonly Name[]): Sheet | UnreadSheet | null {
  if (text === null) return null;
  const read = readSet(text, exercises, unfinishedSetForm);
  return read.ok ? read.set : { text, why: refusalOf(read.faults) };
}
