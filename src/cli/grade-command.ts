import { readFileSync } from 'node:fs';
import { availableParallelism } from 'node:os';
import type { ClassWork } from '../exchange/class/class-work.ts';
import type { Counts } from '../exchange/class/counting.ts';
import { type Entry, gradebookOf } from '../exchange/class/gradebook.ts';
import { gradebookCsv, UTF8_MARK } from '../exchange/class/gradebook-csv.ts';
import { classReport } from '../exchange/class/report.ts';
import { stillMissing, type UnreadPiece } from '../exchange/class/unread.ts';
import { readSet } from '../exchange/read-set.ts';
import { refusalOf } from '../exchange/refusal.ts';
import type { ProblemSet } from '../exchange/set.ts';
import type { Whole } from '../exchange/whole.ts';
import { unknownName } from '../grader/reading/unknown.ts';
import { type Strictness, strictnessFactor } from '../grader/tolerance.ts';
import { type Message, message } from '../words/message.ts';
import { say } from '../words/say.ts';
import { spelledLines } from '../words/unseen.ts';
import { readArguments, usageError } from './arguments.ts';
import { CommandError } from './command-error.ts';
import { crewOf } from './crew.ts';
import { exerciseNames } from './exercises.ts';
import { headLine, sumLine } from './grade-table.ts';
import { inOrder } from './in-order.ts';
import { setAmong } from './set-among.ts';
import type { Command, Talk } from './speak.ts';
import { Strangers } from './strangers.ts';
import type { Form, Manner } from './tell.ts';
import { type Work, whyUnreadable, workIn } from './work.ts';

const usage = message('command.grade-usage');
/** The exit status of a command that was told to stop: 128 and the number of the signal, as shells count. */
const INTERRUPTED = 130;

const reader = { language: 'en', unit: 'in' } as const;

/** Marks hand-ins; the exit status is 1 where something could not be read. */
export const gradeCommand: Command = async (args, talk) => {
  const { values, positionals } = readArguments(
    args,
    {
      set: { type: 'string' },
      strictness: { type: 'string' },
      json: { type: 'boolean' },
      summary: { type: 'boolean' },
      csv: { type: 'boolean' },
      bom: { type: 'boolean' },
      best: { type: 'boolean' },
      cores: { type: 'string' },
      help: { type: 'boolean', short: 'h' },
    },
    usage,
  );
  if (values.help) {
    await talk.say(`${say(usage, reader)}\n`);
    return 0;
  }
  if (positionals.length === 0) throw usageError(message('command.no-path'), usage);
  const strictness = strictnessFrom(values.strictness);
  const set = values.set === undefined ? await setAmong(positionals) : setIn(values.set);
  const form = formOf(values, talk);
  const manner: Manner = { by: { set, strictness }, form };
  const whole = { begin: beginOf(values), counts: countsOf(values) };
  return await markAll(workIn(positionals, talk.input), { hands: coresFrom(values.cores), manner, whole, talk });
};

function strictnessFrom(text: string | undefined): Strictness | null {
  const known = Object.keys(strictnessFactor) as Strictness[];
  if (text === undefined) return null;
  const found = known.find((name) => name === text);
  if (found === undefined) throw usageError(unknownName('what.option-strictness', text, known), usage);
  return found;
}

interface Wanted {
  readonly summary?: boolean;
  readonly csv?: boolean;
  readonly json?: boolean;
  readonly bom?: boolean;
  readonly best?: boolean;
}

function formOf({ summary, csv, json }: Wanted, talk: Talk): Form {
  if (summary) return 'summary';
  if (csv) return 'csv';
  return talk.terminal && !json ? 'table' : 'json';
}

/** With what the gradebook begins. What goes through a pipe wants no mark: the first name of a column would have it in it. */
function beginOf({ csv, bom }: Wanted): string {
  if (bom && !csv) throw usageError(message('command.bom-alone'), usage);
  return bom ? UTF8_MARK : '';
}

/** Which of several attempts counts. Where every piece is told by itself, none is left out. */
function countsOf({ csv, summary, best }: Wanted): Counts {
  if (best && !csv && !summary) throw usageError(message('command.best-alone'), usage);
  return best ? 'best' : 'last';
}

/** How many cores work: as many as the machine has, or as many as were asked for. */
function coresFrom(text: string | undefined): number {
  if (text === undefined) return availableParallelism();
  if (!/^[1-9]\d{0,2}$/.test(text)) throw usageError(message('command.cores', { found: text }), usage);
  return Number(text);
}

/** The set by which work is marked; throws a CommandError that says why it cannot be used. */
function setIn(file: string): ProblemSet {
  const refused = (why: Message): CommandError =>
    new CommandError(say(message('command.set-file', { file, why: { said: why } }), reader));
  let text: string;
  try {
    text = readFileSync(file, 'utf8');
  } catch (error) {
    throw refused(whyUnreadable(error));
  }
  const read = readSet(text, exerciseNames());
  if (!read.ok) throw refused(refusalOf(read.faults));
  return read.set;
}

interface Marks {
  readonly hands: number;
  readonly manner: Manner;
  /** How what is made of all of it is told: with what the CSV begins, and which of several attempts counts. */
  readonly whole: { readonly begin: string; readonly counts: Counts };
  readonly talk: Talk;
}

/** Marks piece after piece, and ends with what is said of all of them. */
async function markAll(work: AsyncIterable<Work>, marks: Marks): Promise<number> {
  const { manner, whole, talk } = marks;
  if (manner.form === 'table') await talk.say(headLine());
  const tally = await tellAll(work, marks);
  const { marked, refused, stopped } = tally;
  if (manner.form === 'table') await talk.say(sumLine(marked, refused));
  if (manner.form === 'summary') await talk.say(summaryOf(tally, marks));
  if (manner.form === 'csv') await talk.say(`${whole.begin}${csvOf(tally, marks)}`);
  if (stopped) {
    await talk.complain(`${say(message('command.stopped', { marked, refused }), reader)}\n`);
    return INTERRUPTED;
  }
  return refused === 0 ? 0 : 1;
}

/** The report on the class. Students are named in it: what is not seen in a name is spelled, as in the rows. */
function summaryOf({ kept }: Tally, { manner, whole, talk }: Marks): string {
  const report = classReport(kept, manner.by.set, whole.counts);
  return spelledLines(`${JSON.stringify(report, null, talk.terminal ? 2 : 0)}\n`);
}

function csvOf({ entries, unread, wholes }: Tally, { manner, whole }: Marks): string {
  const beside = { unread: stillMissing(unread, wholes), counts: whole.counts };
  return gradebookCsv(gradebookOf(entries, manner.by.set, beside), reader);
}

interface Tally {
  /** Whether the person told it to stop before the end: what is printed is a part. */
  readonly stopped: boolean;
  readonly marked: number;
  readonly refused: number;
  readonly kept: readonly ClassWork[];
  readonly entries: readonly Entry[];
  readonly unread: readonly UnreadPiece[];
  readonly wholes: readonly Whole[];
}

/** Tells of each piece in the order they came, until there are no more or the person has told it to stop. */
async function tellAll(work: AsyncIterable<Work>, { hands, manner, talk }: Marks): Promise<Tally> {
  // An empty folder is worth a word, and no failure.
  const count = { marked: 0, refused: 0, noted: 0 };
  const kept: ClassWork[] = [];
  const entries: Entry[] = [];
  const unread: UnreadPiece[] = [];
  const wholes: Whole[] = [];
  const strangers = new Strangers();
  const crew = crewOf(manner, hands);
  for await (const told of inOrder(work, crew)) {
    count[told.outcome] += 1;
    kept.push(...told.kept);
    entries.push(...told.entries);
    wholes.push(...told.wholes);
    // Of a stream nothing is kept that nobody asks for.
    if (manner.form === 'csv') unread.push(...told.unread);
    const err = strangers.hear(told);
    if (err !== '') await talk.complain(err);
    if (told.out !== '') await talk.say(told.out);
    talk.progress?.(say(message('command.progress', { marked: count.marked, refused: count.refused }), reader));
    if (talk.stopped?.()) break;
  }
  const stopped = talk.stopped?.() ?? false;
  talk.progress?.('');
  const again = strangers.inTheEnd();
  if (again !== '') await talk.complain(again);
  await crew.goHome();
  return { ...count, stopped, kept, entries, unread, wholes };
}
