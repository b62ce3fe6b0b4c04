import { readFileSync } from 'node:fs';
import path from 'node:path';
import { parse } from 'yaml';
import { exercisesFolder } from '../../src/cli/exercises.ts';
import { readExercise } from '../../src/grader/read-exercise.ts';
import { placeText } from '../../src/grader/reading/fault.ts';
import { say } from '../../src/words/say.ts';

// What an author wrote, before anything has looked at it: fields may be missing, misspelt or of any kind.
// biome-ignore lint/suspicious/noExplicitAny: tests change it at will
export type Authored = any;

export function authored(name: string): Authored {
  return parse(readFileSync(path.join(exercisesFolder, `${name}.yaml`), 'utf8'));
}

/** The faults of an exercise file that was changed, as an author reads them, one line each. */
export function faultsAfter(name: string, change: (exercise: Authored) => void): string {
  const data = authored(name);
  change(data);
  return faultsIn(name, data);
}

export function faultsIn(name: string, data: unknown): string {
  const read = readExercise(name, data);
  if (read.ok) return 'no fault';
  const reader = { language: 'en', unit: 'in' } as const;
  return read.faults.map(({ at, message }) => `${placeText(at) || '(file)'}: ${say(message, reader)}`).join('\n');
}
