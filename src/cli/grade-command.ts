import { unknownName } from '../grader/reading/unknown.ts';
import { type Strictness, strictnessFactor } from '../grader/tolerance.ts';
import { message } from '../words/message.ts';
import { say } from '../words/say.ts';
import { spelled } from '../words/unseen.ts';
import { readArguments, usageError } from './arguments.ts';
import { loadExercise } from './exercises.ts';
import { gradePiece, type Marked } from './grade-piece.ts';
import { headLine, sumLine, workLines } from './grade-table.ts';
import type { Command, Talk } from './speak.ts';
import { type Work, workIn } from './work.ts';

const usage = message('command.grade-usage');
const reader = { language: 'en', unit: 'in' } as const;

/** Marks hand-ins; the exit status is 1 where something could not be read. */
export const gradeCommand: Command = async (args, talk) => {
  const { values, positionals } = readArguments(
    args,
    { strictness: { type: 'string' }, json: { type: 'boolean' }, help: { type: 'boolean', short: 'h' } },
    usage,
  );
  if (values.help) {
    await talk.say(`${say(usage, reader)}\n`);
    return 0;
  }
  if (positionals.length === 0) throw usageError(message('command.no-path'), usage);
  const strictness = strictnessFrom(values.strictness);
  return await markAll(workIn(positionals, talk.input), strictness, {
    ...talk,
    terminal: talk.terminal && !values.json,
  });
};

function strictnessFrom(text: string | undefined): Strictness | null {
  const known = Object.keys(strictnessFactor) as Strictness[];
  if (text === undefined) return null;
  const found = known.find((name) => name === text);
  if (found === undefined) throw usageError(unknownName('what.option-strictness', text, known), usage);
  return found;
}

/** Marks piece after piece, holding one at a time. */
async function markAll(work: AsyncIterable<Work>, strictness: Strictness | null, talk: Talk): Promise<number> {
  let marked = 0;
  let refused = 0;
  if (talk.terminal) await talk.say(headLine());
  for await (const piece of work) {
    const result = resultOf(piece, strictness);
    if (result.ok) marked += 1;
    // An empty folder is worth a word, and no failure.
    else if (!('note' in piece)) refused += 1;
    await tell(piece.where, result, talk);
  }
  if (talk.terminal) await talk.say(sumLine(marked, refused));
  return refused === 0 ? 0 : 1;
}

function resultOf(piece: Work, strictness: Strictness | null): Marked {
  if ('text' in piece) return gradePiece(piece, loadExercise, strictness);
  return { ok: false, reason: say('note' in piece ? piece.note : piece.refused, reader) };
}

async function tell(where: string, result: Marked, talk: Talk): Promise<void> {
  if (!result.ok) return await talk.complain(`${spelled(where)}: ${spelled(result.reason)}\n`);
  // In JSON, too, what is spelled stays what it was.
  await talk.say(talk.terminal ? workLines(result.row, result.notMade) : `${spelled(JSON.stringify(result.row))}\n`);
}
