import { isOnCalendar } from '../exchange/fields.ts';
import { readSetJson } from '../exchange/read-set.ts';
import { refusalOf } from '../exchange/refusal.ts';
import { type ProblemSet, SET_FORMAT, SET_VERSION } from '../exchange/set.ts';
import { setLink } from '../exchange/set-link.ts';
import { usualMarks } from '../exchange/set-marks.ts';
import { writeSet } from '../exchange/write-set.ts';
import { hashOf } from '../garment/seed.ts';
import { type Message, message } from '../words/message.ts';
import { say } from '../words/say.ts';
import { pairOf, readArguments, usageError } from './arguments.ts';
import { CommandError } from './command-error.ts';
import { exerciseNames, loadExercise } from './exercises.ts';
import type { Command } from './speak.ts';

const usage = message('command.set-usage');
const reader = { language: 'en', unit: 'in' } as const;

const options = {
  title: { type: 'string', default: 'Problem set' },
  note: { type: 'string', default: '' },
  figures: { type: 'string', default: 'stated' },
  seed: { type: 'string' },
  strictness: { type: 'string', default: 'workroom' },
  house: { type: 'string', multiple: true, default: [] },
  feedback: { type: 'string', default: 'place' },
  checks: { type: 'string' },
  'no-hints': { type: 'boolean', default: false },
  due: { type: 'string' },
  link: { type: 'string' },
  help: { type: 'boolean', short: 'h' },
} as const;

/** Makes a problem set and prints its file, or its link. */
export const setCommand: Command = async (args, talk) => {
  const { values, positionals } = readArguments(args, { ...options, house: { ...options.house, default: [] } }, usage);
  if (values.help) {
    await talk.say(`${say(usage, reader)}\n`);
    return 0;
  }
  if (positionals.length === 0)
    throw usageError(message('command.no-exercise', { known: exerciseNames().join(', ') }), usage);
  const set = checked({
    format: SET_FORMAT,
    version: SET_VERSION,
    title: values.title,
    note: values.note,
    exercises: positionals.map(exerciseFrom),
    figures: figuresFrom(values.figures),
    seed: values.seed ?? seedOf([values.title, ...positionals]),
    strictness: values.strictness,
    house: Object.fromEntries(values.house.map((text) => pairOf('--house', text, usage))),
    feedback: values.feedback,
    checks: values.checks === undefined ? null : numberFrom(values.checks),
    hints: !values['no-hints'],
    due: values.due === undefined ? null : dueFrom(values.due),
  });
  await talk.say(values.link === undefined ? writeSet(set) : `${addressOf(values.link, set)}\n`);
  return 0;
};

/** `roll-line=20`, or `roll-line` for as many marks as the exercise itself has. */
function exerciseFrom(text: string) {
  if (text.includes('=')) {
    const [exercise, marks] = pairOf('EXERCISE', text, usage);
    return { exercise, marks: numberFrom(marks) };
  }
  return { exercise: text, marks: usualMarks(loadExercise(text)) };
}

/** What is no number is left to the reader of sets, which says what is wanted. */
function numberFrom(text: string): unknown {
  return /^\d+$/.test(text) ? Number(text) : text;
}

/** `stated`, `named=amara`, `sampled=women` or `each=women`, as the reader of sets takes it. */
function figuresFrom(text: string): unknown {
  if (!text.includes('=')) return text;
  const [how, who] = pairOf('--figures', text, usage);
  return { [how]: who };
}

/** The same words make the same set. */
function seedOf(words: readonly string[]): string {
  return (hashOf(words.join('\n')) >>> 0).toString(36);
}

/** Of anything else a machine makes a date too, and seldom the one that was meant: of 12/11 one in December. */
const DATE = /^\d{4}-\d{2}-\d{2}(?:T\d{2}:\d{2}(?::\d{2}(?:\.\d+)?)?(?:Z|[+-]\d{2}:\d{2})?)?$/;

/** A day, which ends at its midnight, or a day and time; in the time of this machine, unless it says otherwise. */
function dueFrom(text: string): string {
  const date = new Date(/^[^T]+$/.test(text) ? `${text}T23:59` : text);
  if (!DATE.test(text) || Number.isNaN(date.getTime()) || !isOnCalendar(text))
    throw usageError(message('command.set-due', { found: text }), usage);
  return date.toISOString();
}

/** What was asked for, read like any set that comes from elsewhere; throws a CommandError that says what does not fit. */
function checked(json: unknown): ProblemSet {
  const read = readSetJson(json, exerciseNames());
  if (!read.ok) throw refused(refusalOf(read.faults));
  return read.set;
}

function addressOf(course: string, set: ProblemSet): string {
  const link = setLink(set);
  if (!link.ok) throw refused(link.message);
  const home = URL.canParse(course) ? new URL(course) : null;
  // What has no scheme before its port is taken for one: `localhost:4321`.
  if (home === null || !/^https?:$/.test(home.protocol))
    throw usageError(message('command.set-address', { found: course }), usage);
  home.pathname = home.pathname.replace(/(?:\/index\.html)?\/*$/, '/');
  return new URL(`set/#${link.hash}`, home).href;
}

function refused(why: Message): CommandError {
  return new CommandError(say(why, reader));
}
