import { is } from 'valibot';
import { readSteps } from '../drafting/read.ts';
import type { Name, Step } from '../drafting/step.ts';
import { name } from '../grader/reading/fields.ts';
import { line } from './fields.ts';
import { HAND_IN_FORMAT } from './hand-in.ts';
import { NAME_LENGTH, NUMBER_LENGTH, type Student } from './student.ts';

/** What the beginning of a hand-in tells of it. `exercise` is null where it was cut off before that. */
export interface Beginning extends Student {
  readonly exercise: Name | null;
}

/** A text in JSON, as far as it goes: its end may be cut off. */
const BEGUN_TEXT = String.raw`"[^"\\]*(?:\\.[^"\\]*)*`;
const TEXT = `${BEGUN_TEXT}"`;

const BEGUN = new RegExp(
  `^\\{"format":"${HAND_IN_FORMAT}","version":\\d+,"student":(${TEXT}),"number":(${TEXT})` +
    `(?:,"set":(?:null|\\{"title":${TEXT},"id":${TEXT}\\}),"exercise":(${TEXT}))?`,
  's',
);

const TEXT_OR_SPACE = new RegExp(`(${BEGUN_TEXT}"?)|\\s+`, 'gs');

/** So many characters of a hand-in, however it is set out, say that it is one. */
const HEAD = 200;

/** What follows the draft in a hand-in: how it was come by, which is another every time the same draft is saved. */
const AFTER_DRAFT = ',"shown":';

/**
 * How a text that could not be read begins, without the space between its parts and no further than its draft goes. Empty where
 * it does not begin as a hand-in, with its fields in our order, that says whose it is.
 */
export function begunText(text: string): string {
  if (!text.slice(0, HEAD).includes(HAND_IN_FORMAT)) return '';
  const tight = text.replace(/^\uFEFF/, '').replaceAll(TEXT_OR_SPACE, '$1');
  if (beginningOf(tight) === null) return '';
  const end = tight.lastIndexOf(AFTER_DRAFT);
  return end < 0 ? tight : tight.slice(0, end);
}

/** What a text that `begunText` gave tells; null where it tells nothing. */
export function beginningOf(begun: string): Beginning | null {
  const [, student, number, exercise] = (BEGUN.exec(begun) ?? []).map(jsonIn);
  if (!is(line('wants.student', NAME_LENGTH), student) || !is(line('wants.student', NUMBER_LENGTH), number))
    return null;
  return { student, number, exercise: is(name('wants.exercise-name'), exercise) ? exercise : null };
}

const STEPS = '"steps":[';

/** Where the last step was cut off, the end of the one before it is so many brackets back at most. */
const DEEP = 8;

/** The steps that stand there to their end; null where they are none of ours. */
export function begunSteps(begun: string): readonly Step[] | null {
  const from = begun.indexOf(STEPS);
  const list = from < 0 ? '' : begun.slice(from + STEPS.length);
  let end = list.length + 1;
  for (let tries = 0; tries < DEEP && end > 0; tries += 1) {
    // The one before: that itself, too, is looked at only once.
    end = list.slice(0, end - 1).lastIndexOf('}') + 1;
    const steps = jsonIn(`[${list.slice(0, end)}]`);
    if (!Array.isArray(steps)) continue;
    const read = readSteps(steps);
    return read.ok ? read.steps : null;
  }
  return list === '' ? [] : null;
}

/** What stands in a piece of JSON; undefined where it is not whole. */
function jsonIn(json: string | undefined): unknown {
  try {
    return json === undefined ? undefined : JSON.parse(json);
  } catch {
    return undefined;
  }
}
