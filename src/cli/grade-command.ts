import { readFileSync } from 'node:fs';
import type { Marking } from '../exchange/mark-work.ts';
import { readSet } from '../exchange/read-set.ts';
import { refusalOf } from '../exchange/refusal.ts';
import type { ProblemSet } from '../exchange/set.ts';
import { unknownName } from '../grader/reading/unknown.ts';
import { type Strictness, strictnessFactor } from '../grader/tolerance.ts';
import { type Message, message } from '../words/message.ts';
import { say } from '../words/say.ts';
import { spelled } from '../words/unseen.ts';
import { readArguments, usageError } from './arguments.ts';
import { CommandError } from './command-error.ts';
import { exerciseNames } from './exercises.ts';
import { gradePiece, type Marked } from './grade-piece.ts';
import { headLine, sumLine, workLines } from './grade-table.ts';
import type { Command, Talk } from './speak.ts';
import { type Work, whyUnreadable, workIn } from './work.ts';

const usage = message('command.grade-usage');
const reader = { language: 'en', unit: 'in' } as const;

/** Marks hand-ins; the exit status is 1 where something could not be read. */
export const gradeCommand: Command = async (args, talk) => {
  const { values, positionals } = readArguments(
    args,
    {
      set: { type: 'string' },
      strictness: { type: 'string' },
      json: { type: 'boolean' },
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
  const set = values.set === undefined ? null : setIn(values.set);
  return await markAll(
    workIn(positionals, talk.input),
    { set, strictness },
    {
      ...talk,
      terminal: talk.terminal && !values.json,
    },
  );
};

function strictnessFrom(text: string | undefined): Strictness | null {
  const known = Object.keys(strictnessFactor) as Strictness[];
  if (text === undefined) return null;
  const found = known.find((name) => name === text);
  if (found === undefined) throw usageError(unknownName('what.option-strictness', text, known), usage);
  return found;
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

type MarkedBy = Omit<Marking, 'load'>;

/** Marks piece after piece, holding one at a time. */
async function markAll(work: AsyncIterable<Work>, by: MarkedBy, talk: Talk): Promise<number> {
  let marked = 0;
  let refused = 0;
  if (talk.terminal) await talk.say(headLine());
  for await (const piece of work) {
    const result = resultOf(piece, by);
    if (result.ok) marked += 1;
    // An empty folder is worth a word, and no failure.
    else if (!('note' in piece)) refused += 1;
    await tell(piece.where, result, talk);
  }
  if (talk.terminal) await talk.say(sumLine(marked, refused));
  return refused === 0 ? 0 : 1;
}

function resultOf(piece: Work, by: MarkedBy): Marked {
  if ('text' in piece) return gradePiece(piece, by);
  return { ok: false, reason: say('note' in piece ? piece.note : piece.refused, reader) };
}

async function tell(where: string, result: Marked, talk: Talk): Promise<void> {
  if (!result.ok) return await talk.complain(`${spelled(where)}: ${spelled(result.reason)}\n`);
  // In JSON, too, what is spelled stays what it was.
  await talk.say(talk.terminal ? workLines(result.row, result.notMade) : `${spelled(JSON.stringify(result.row))}\n`);
}
