import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { type Document, LineCounter, parseDocument } from 'yaml';
import { refusalOf } from '../exchange/refusal.ts';
import type { Exercise } from '../grader/exercise.ts';
import { readExercise } from '../grader/read-exercise.ts';
import type { Place } from '../grader/reading/fault.ts';
import { unknownName } from '../grader/reading/unknown.ts';
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
  const read = readExercise(name, dataOf(name, document));
  if (read.ok) return read.exercise;
  const told = read.faults.map((fault) => {
    const { line, col } = lines.linePos(offsetOf(document, fault.at));
    return `${name}.yaml:${line}:${col}: ${say(refusalOf([fault]), reader)}`;
  });
  throw new CommandError(told.join('\n'));
}

/** Where a place starts in the text: the place itself, or the nearest thing around it that is there. */
function offsetOf(document: Document, at: Place): number {
  for (let length = at.length; length > 0; length -= 1) {
    const node = document.getIn(at.slice(0, length), true) as { readonly range?: readonly number[] } | undefined;
    if (node?.range?.[0] !== undefined) return node.range[0];
  }
  return 0;
}

/** The data of a YAML document; a CommandError where its aliases would make it grow without end. */
function dataOf(name: string, document: Document): unknown {
  try {
    return document.toJS();
  } catch (error) {
    throw new CommandError(`${name}.yaml: ${(error as Error).message}`, { cause: error });
  }
}
