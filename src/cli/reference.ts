import { readFileSync } from 'node:fs';
import process from 'node:process';
import { dealOrder } from '../grader/deal.ts';
import { message } from '../words/message.ts';
import { say } from '../words/say.ts';
import { pairOf, readArguments, usageError } from './arguments.ts';
import { CommandError } from './command-error.ts';
import { exerciseNames, loadExercise } from './exercises.ts';
import { orderAsked } from './reference-order.ts';
import { referenceSheet } from './reference-sheet.ts';
import { runCommand, write } from './speak.ts';
import { whyUnreadable } from './work.ts';

const usage = message('command.reference-usage');
const reader = { language: 'en', unit: 'in' } as const;

await runCommand(async () => {
  const { values, positionals } = readArguments(
    process.argv.slice(2),
    {
      figure: { type: 'string' },
      style: { type: 'string', multiple: true, default: [] },
      house: { type: 'string', multiple: true, default: [] },
      seed: { type: 'string', default: 'reference' },
      help: { type: 'boolean', short: 'h' },
    },
    usage,
  );
  if (values.help) {
    await write(process.stdout, `${say(usage, reader)}\n`);
    return 0;
  }
  const [name, second] = positionals;
  if (name === undefined)
    throw usageError(message('command.no-exercise', { known: exerciseNames().join(', ') }), usage);
  if (second !== undefined) throw usageError(message('command.one-exercise', { found: second }), usage);
  const exercise = loadExercise(name);
  const order = orderAsked(exercise, {
    figure: values.figure === undefined ? null : { file: values.figure, text: textOf(values.figure) },
    style: values.style.map((text) => pairOf('--style', text, usage)),
    house: values.house.map((text) => pairOf('--house', text, usage)),
    seed: values.seed,
  });
  const dealt = dealOrder(order);
  if (!dealt.ok) throw new CommandError(say(dealt.message, reader));
  const sheet = referenceSheet(exercise, order.figure, Object.keys(order.style), dealt.givens);
  await write(process.stdout, `${JSON.stringify(sheet, null, process.stdout.isTTY ? 2 : 0)}\n`);
  return 0;
});

function textOf(file: string): string {
  try {
    return readFileSync(file, 'utf8');
  } catch (error) {
    const why = { said: whyUnreadable(error) };
    throw new CommandError(say(message('command.figure', { file, why }), reader), { cause: error });
  }
}
