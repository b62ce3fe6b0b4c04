import { orderOf } from '../exchange/order-from.ts';
import { readFigure } from '../garment/figure.ts';
import { houseRules } from '../garment/house-rules.ts';
import { readStyle } from '../garment/style.ts';
import type { Exercise } from '../grader/exercise.ts';
import type { Order } from '../grader/order.ts';
import { orderFor } from '../grader/order-for.ts';
import { ownMeasures } from '../grader/own-measures.ts';
import { unknownName } from '../grader/reading/unknown.ts';
import { type Message, message } from '../words/message.ts';
import { say } from '../words/say.ts';
import { CommandError } from './command-error.ts';

const reader = { language: 'en', unit: 'in' } as const;

/** What a person asked for on the command line, still as text. */
export interface Asked {
  /** The figure file's name and text; null for the exercise's own figure. */
  readonly figure: { readonly file: string; readonly text: string } | null;
  readonly style: readonly (readonly [string, string])[];
  readonly house: readonly (readonly [string, string])[];
  readonly seed: string;
}

/** The order asked for; throws a CommandError that says what cannot be used, a line each. */
export function orderAsked(exercise: Exercise, asked: Asked): Order {
  const figure = asked.figure === null ? orderFor(exercise, asked.seed).figure : figureFrom(asked.figure);
  const house = Object.fromEntries(asked.house);
  const style = styleFrom(exercise, asked.style, { ...exercise.house, ...house });
  const made = orderOf({ figure: { measures: figure }, style, house }, exercise);
  if (!made.ok) throw refused([made.message]);
  return made.order;
}

function figureFrom({ file, text }: { readonly file: string; readonly text: string }) {
  const unusable = (why: Message): Message => message('command.figure', { file, why: { said: why } });
  const read = readFigure(parsed(text, unusable));
  if (read.ok) return read.figure;
  throw refused(read.errors.map((error) => unusable(error.message)));
}

function parsed(text: string, unusable: (why: Message) => Message): unknown {
  try {
    return JSON.parse(text.replace(/^\uFEFF/, ''));
  } catch (cause) {
    throw refused([unusable(message('command.not-json'))], cause);
  }
}

/** The style asked for. Only measures that the exercise states, or that a house rule in force needs, may be given. */
function styleFrom(
  exercise: Exercise,
  pairs: Asked['style'],
  house: Readonly<Record<string, string>>,
): Readonly<Record<string, string>> {
  const needed = houseRules.flatMap(
    ({ name, choices }) => choices.find((choice) => choice.name === house[name])?.uses ?? [],
  );
  const known = [...new Set([...Object.keys(exercise.style), ...needed])];
  const strange = pairs.filter(([name]) => !known.includes(name));
  const style = Object.fromEntries(pairs);
  const stated = Object.entries(exercise.style).map(([name, { value }]) => [name, value]);
  const read = readStyle({ ...Object.fromEntries(stated), ...style }, ownMeasures(exercise));
  const faults = [
    ...strange.map(([name]) => unknownName('what.style-measure', name, known)),
    ...(read.ok ? [] : read.errors.filter(({ path }) => known.includes(path)).map((error) => error.message)),
  ];
  if (faults.length > 0) throw refused(faults);
  return style;
}

function refused(why: readonly Message[], cause?: unknown): CommandError {
  return new CommandError(why.map((one) => say(one, reader)).join('\n'), { cause });
}
