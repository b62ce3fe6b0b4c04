import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { LineCounter, parseDocument } from 'yaml';
import type { Exercise } from '../grader/exercise.ts';
import { readExercise } from '../grader/read-exercise.ts';
import { message } from '../words/message.ts';
import { say } from '../words/say.ts';
import { CommandError } from './command-error.ts';
import { noExercise } from './no-exercise.ts';
import { offsetOf, placeWords } from './yaml/place.ts';
import { syntaxFault } from './yaml/syntax-fault.ts';

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

/** Exercises that were read, by file: what one thread has read and found sound, another need not read again. */
export type ReadExercises = ReadonlyMap<string, Exercise>;

/** Those that this thread has read so far. */
export function exercisesRead(): ReadExercises {
  return loaded;
}

/** Takes over what another thread has read. */
export function takeExercises(read: ReadExercises): void {
  for (const [file, exercise] of read) loaded.set(file, exercise);
}

/** The exercise of this name, read once. Throws a CommandError that says what is wrong: no such exercise, or every fault with its line. */
export function loadExercise(name: string, folder = exercisesFolder): Exercise {
  const file = path.join(folder, `${name}.yaml`);
  // A way that leads to a known file is no name of it.
  const known = path.basename(name) === name ? loaded.get(file) : undefined;
  if (known !== undefined) return known;
  const names = exerciseNames(folder);
  // A name from a file may be anything: only what the folder lists is opened.
  if (!names.includes(name)) throw new CommandError(say(noExercise(name, names, readdirSync(folder)), reader));
  const exercise = parseExercise(name, readFileSync(file, 'utf8'));
  loaded.set(file, exercise);
  return exercise;
}

/** Reads the text of an exercise file; throws a CommandError with one line a fault, `overlap.yaml:12:5: check 1, marks: …`. */
export function parseExercise(name: string, text: string): Exercise {
  const lines = new LineCounter();
  const told = (offset: number, said: string): string => {
    // A place in an empty text lies on no line.
    const { line, col } = lines.linePos(offset);
    return `${name}.yaml:${Math.max(1, line)}:${Math.max(1, col)}: ${said}`;
  };
  const yaml = unlessDeep(() => yamlIn(text, lines));
  if (yaml === 'deep') throw new CommandError(told(0, say(message('yaml.deep'), reader)));
  const { broken, document, data } = yaml;
  if (broken !== null) throw new CommandError(told(broken.offset, say(broken.message, reader)));
  const read = readExercise(name, data);
  if (read.ok) return read.exercise;
  const faults = read.faults.map(({ at, message: fault }) => {
    const place = placeWords(data, at);
    return told(offsetOf(document, at), `${place === '' ? '' : `${place}: `}${say(fault, reader)}`);
  });
  throw new CommandError([...new Set(faults)].join('\n'));
}

/** The YAML of a text, and the first slip in it, with which there is no data. */
function yamlIn(text: string, lines: LineCounter) {
  const document = parseDocument(text, { lineCounter: lines, logLevel: 'error' });
  const broken = syntaxFault(text, document.errors);
  // With no aliases in it, the data is no larger than the text.
  const data: unknown = broken === null ? document.toJS() : null;
  return { broken, document, data };
}

/** The parser goes down into a group within a group, and so on, until there is no room left. */
function unlessDeep<T>(parse: () => T): T | 'deep' {
  try {
    return parse();
  } catch (error) {
    if (error instanceof RangeError) return 'deep';
    throw error;
  }
}
