import { readFileSync } from 'node:fs';
import type { Problem } from '../drafting/sheet.ts';
import { rulesInForce } from '../garment/rules-in-force.ts';
import { asName } from '../grader/authoring/file-name-faults.ts';
import type { Exercise } from '../grader/exercise.ts';
import { layOut } from '../grader/lay-out.ts';
import { referenceOn } from '../grader/standing.ts';
import { type Message, message } from '../words/message.ts';
import { say } from '../words/say.ts';
import { pairOf, readArguments, usageError } from './arguments.ts';
import { CommandError } from './command-error.ts';
import { exerciseNames, loadExercise } from './exercises.ts';
import { orderAsked } from './reference-order.ts';
import { referenceSheet } from './reference-sheet.ts';
import type { Command } from './speak.ts';
import { whyUnreadable } from './work.ts';

const usage = message('command.reference-usage');
const reader = { language: 'en', unit: 'in' } as const;

/** Draws the reference of an exercise and prints it as JSON. */
export const referenceCommand: Command = async (args, talk) => {
  const { values, positionals } = readArguments(
    args,
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
    await talk.say(`${say(usage, reader)}\n`);
    return 0;
  }
  const exercise = exerciseFrom(positionals);
  const order = orderAsked(exercise, {
    figure: values.figure === undefined ? null : { file: values.figure, text: textOf(values.figure) },
    style: values.style.map((text) => pairOf('--style', text, usage)),
    house: values.house.map((text) => pairOf('--house', text, usage)),
    seed: values.seed,
  });
  const dealt = layOut(exercise, order);
  if (!dealt.ok) throw new CommandError(say(dealt.message, reader));
  // Part of a model answer would pass for the whole of one.
  const [problem] = referenceOn(exercise, dealt.givens).problems;
  if (problem !== undefined) throw new CommandError(say(message('grader.problem', placed(problem)), reader));
  const sheet = referenceSheet(exercise, order.figure, Object.keys(order.style), dealt.givens);
  // For a person the rules are told beside the JSON, which stays what programs read.
  if (talk.terminal) for (const rule of rulesInForce(order.house)) await talk.complain(`${say(rule, reader)}\n`);
  await talk.say(`${JSON.stringify(sheet, null, talk.terminal ? 2 : 0)}\n`);
  // To its author the numbers say little; what reading the file has proved stands below them, where it is seen.
  if (talk.terminal) await talk.complain(`${say(soundness(exercise), reader)}\n`);
  return 0;
};

/** The step of the reference that cannot be carried out on this order, and why. */
function placed({ step, message: said }: Problem): Message['values'] {
  return { step: step + 1, problem: { sentence: said } };
}

function soundness({ id, targets, checks, misreadings }: Exercise): Message {
  return message('command.reference-sound', {
    exercise: id,
    targets: targets.length,
    checks: checks.length,
    marks: checks.reduce((sum, check) => sum + check.marks, 0),
    misreadings: misreadings.length,
  });
}

function exerciseFrom(asked: readonly string[]): Exercise {
  const [name, second] = asked;
  if (name === undefined)
    throw usageError(message('command.no-exercise', { known: exerciseNames().join(', ') }), usage);
  // Is it one title, typed without its hyphens? Then the name that was meant is told.
  const title = asked.join(' ');
  if (second !== undefined && exerciseNames().includes(asName(title))) return loadExercise(title);
  if (second !== undefined) throw usageError(message('command.one-exercise', { found: second }), usage);
  return loadExercise(name);
}

function textOf(file: string): string {
  try {
    return readFileSync(file, 'utf8');
  } catch (error) {
    const why = { said: whyUnreadable(error) };
    throw new CommandError(say(message('command.figure', { file, why }), reader), { cause: error });
  }
}
