import process from 'node:process';
import { unknownName } from '../grader/reading/unknown.ts';
import { type Strictness, strictnessFactor } from '../grader/tolerance.ts';
import { message } from '../words/message.ts';
import { say } from '../words/say.ts';
import { readArguments, usageError } from './arguments.ts';
import { loadExercise } from './exercises.ts';
import { gradePiece, type Marked } from './grade-piece.ts';
import { headLine, sumLine, workLines } from './grade-table.ts';
import { runCommand, write } from './speak.ts';
import { standardInput, type Work, workIn } from './work.ts';

const usage = message('command.grade-usage');
const reader = { language: 'en', unit: 'in' } as const;

await runCommand(async () => {
  const { values, positionals } = readArguments(
    process.argv.slice(2),
    { strictness: { type: 'string' }, json: { type: 'boolean' }, help: { type: 'boolean', short: 'h' } },
    usage,
  );
  if (values.help) {
    await write(process.stdout, `${say(usage, reader)}\n`);
    return 0;
  }
  if (positionals.length === 0) throw usageError(message('command.no-path'), usage);
  const strictness = strictnessFrom(values.strictness);
  const table = process.stdout.isTTY && !values.json;
  return await markAll(workIn(positionals, standardInput()), strictness, table);
});

function strictnessFrom(text: string | undefined): Strictness | null {
  const known = Object.keys(strictnessFactor) as Strictness[];
  if (text === undefined) return null;
  const found = known.find((name) => name === text);
  if (found === undefined) throw usageError(unknownName('what.option-strictness', text, known), usage);
  return found;
}

/** Marks piece after piece, holding one at a time; the exit status is 1 where something could not be read. */
async function markAll(work: AsyncIterable<Work>, strictness: Strictness | null, table: boolean): Promise<number> {
  let marked = 0;
  let refused = 0;
  if (table) await write(process.stdout, headLine());
  for await (const piece of work) {
    const result = resultOf(piece, strictness);
    if (result.ok) marked += 1;
    // An empty folder is worth a word, and no failure.
    else if (!('note' in piece)) refused += 1;
    await tell(piece.where, result, table);
  }
  if (table) await write(process.stdout, sumLine(marked, refused));
  return refused === 0 ? 0 : 1;
}

function resultOf(piece: Work, strictness: Strictness | null): Marked {
  if ('text' in piece) return gradePiece(piece.text, loadExercise, strictness);
  return { ok: false, reason: say('note' in piece ? piece.note : piece.refused, reader) };
}

async function tell(where: string, result: Marked, table: boolean): Promise<void> {
  if (!result.ok) return await write(process.stderr, `${where}: ${result.reason}\n`);
  await write(process.stdout, table ? workLines(result.row) : `${JSON.stringify(result.row)}\n`);
}
