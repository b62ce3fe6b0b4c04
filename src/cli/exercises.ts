import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { LineCounter, parseDocument } from 'yaml';
import type { Exercise } from '../grader/exercise.ts';
import { readExercise } from '../grader/read-exercise.ts';
import { type Fault, placeText } from '../grader/reading/fault.ts';
import { unknownName } from '../grader/reading/unknown.ts';
import { message } from '../words/message.ts';
import { say } from '../words/say.ts';
import { CommandError } from './command-error.ts';

/** Where the exercises lie: one YAML file each, named after the exercise. */
export const exercisesFolder = path.resolve(import.meta.dirname, '../../exercises');

const reader = { language: 'en', unit: 'in' } as const;

/** The names of all exercises, sorted. */
export function exerciseNames(folder = exercisesFolder): readonly string[] {
  return readdirSync(folder)
    .filter((file) => file.endsWith('.yaml'))
    .map((file) => file.slice(0, -'.yaml'.length))
    .sort();
}

const loaded = new Map<string, Exercise>();

/** The exercise of this name, read once. Throws a CommandError that says what is wrong: no such exercise, or every fault with its line. */
export function loadExercise(name: string, folder = exercisesFolder): Exercise {
  const file = path.join(folder, `${name}.yaml`);
  const known = loaded.get(file);
  if (known !== undefined) return known;
  const names = exerciseNames(folder);
  // A name from a file may be anything: only what the folder lists is opened.
  if (!names.includes(name)) throw new CommandError(say(unknownName('what.exercise', name, names), reader));
  const exercise = parseExercise(name, readFileSync(file, 'utf8'));
  loaded.set(file, exercise);
  return exercise;
}

/** Reads the text of an exercise file; throws a CommandError with one line a fault, `overlap.yaml:12:5: checks[0].marks: …`. */
export function parseExercise(name: string, text: string): Exercise {
  const lines = new LineCounter();
  const document = parseDocument(text, { lineCounter: lines });
  const broken = document.errors.map(({ message: said, linePos }) => {
    const at = linePos?.[0];
    return `${name}.yaml${at === undefined ? '' : `:${at.line}:${at.col}`}: ${said.split('\n')[0]}`;
  });
  if (broken.length > 0) throw new CommandError(broken.join('\n'));
  const read = readExercise(name, document.toJS());
  if (read.ok) return read.exercise;
  throw new CommandError(read.faults.map((fault) => lineFor(fault)).join('\n'));

  function lineFor({ at, message: said }: Fault): string {
    const offset = offsetOf(at);
    const { line, col } = lines.linePos(offset);
    const where = at.length === 0 ? { said } : { said: message('files.at', { place: placeText(at), said: { said } }) };
    return `${name}.yaml:${line}:${col}: ${say(where.said, reader)}`;
  }

  /** Where a place starts in the text: the place itself, or the nearest thing around it that is there. */
  function offsetOf(at: Fault['at']): number {
    for (let length = at.length; length > 0; length -= 1) {
      const node = document.getIn(at.slice(0, length), true) as { readonly range?: readonly number[] } | undefined;
      if (node?.range?.[0] !== undefined) return node.range[0];
    }
    return 0;
  }
}
