import { nearestSpelling } from '../../drafting/spelling.ts';
import { readAuthored } from '../../words/authored.ts';
import { type Message, message } from '../../words/message.ts';
import type { Exercise } from '../exercise.ts';
import type { Laid } from '../lay-out.ts';
import type { Fault, Place } from '../reading/fault.ts';
import { loneLength } from './one-unit.ts';

/** What feedback may say besides the measures of the order. */
export const readings: readonly string[] = ['off', 'measured', 'expected', 'way'];

interface Text {
  readonly at: Place;
  readonly text: string;
  readonly values: readonly string[];
  /** Whether it is read before the learner has begun to look, and must not give a measure away. */
  readonly early?: boolean;
}

/** Texts that cannot be read, that give a length in one unit, or that use a value there is none of: what the learner reads beforehand has no more than the learner's own measures. */
export function textFaults(exercise: Exercise, { givens, learner }: Laid): readonly Fault[] {
  const [all, own] = [givens, learner].map(({ measures }) => [...measures.keys()]);
  return textsOf(exercise, all ?? [], own ?? []).flatMap(faultsIn);
}

function textsOf(exercise: Exercise, measures: readonly string[], own: readonly string[]): readonly Text[] {
  const feedback = [...measures, ...readings];
  return [
    { at: ['title'], text: exercise.title, values: [] },
    ...Object.entries(exercise.style).flatMap(([name, { about }]) =>
      about === undefined ? [] : [{ at: ['style', name, 'about'], text: about, values: [] }],
    ),
    { at: ['brief'], text: exercise.brief, values: own },
    ...exercise.targets.flatMap(({ hints }, target) =>
      hints.map((text, hint) => ({ at: ['targets', target, 'hints', hint], text, values: own, early: hint === 0 })),
    ),
    ...exercise.checks.flatMap(({ why, mend }, check) => [
      { at: ['checks', check, 'why'], text: why, values: feedback },
      // Advice is given for targets that are missing too, where nothing has been measured.
      { at: ['checks', check, 'mend'], text: mend, values: measures },
    ]),
    ...exercise.misreadings.map(({ says }, index) => ({
      at: ['misreadings', index, 'says'],
      text: says,
      values: feedback,
    })),
  ];
}

function faultsIn({ at, text, values, early }: Text): readonly Fault[] {
  const read = readAuthored(text);
  if (!read.ok) {
    return [
      { at, message: message(read.fault === 'tag' ? 'author.text-tag' : 'author.text-brace', { near: read.near }) },
    ];
  }
  const [first] = read.uses;
  if (early && first !== undefined) return [{ at, message: message('author.hint-early', { name: first }) }];
  const lone = loneLength(text);
  return [
    ...read.uses.filter((name) => !values.includes(name)).map((name) => ({ at, message: unknownValue(name, values) })),
    ...(lone === null ? [] : [{ at, message: message('author.text-one-unit', { ...lone }) }]),
  ];
}

function unknownValue(name: string, values: readonly string[]): Message {
  if (values.length === 0) return message('author.text-bare', { name });
  const meant = nearestSpelling(name, values);
  if (meant !== null) return message('author.text-unknown-meant', { name, meant });
  return message('author.text-unknown', { name, known: values.join(', ') });
}
