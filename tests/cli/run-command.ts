import { spawn } from 'node:child_process';
import path from 'node:path';
import { attempt, type Command } from '../../src/cli/speak.ts';

export interface Ran {
  readonly status: number | null;
  readonly out: string;
  readonly err: string;
}

/** Runs a command in this process, with these words after it and `input` on standard input. */
export async function runHere(command: Command, words: readonly string[], input = '', terminal = false): Promise<Ran> {
  const heard = { out: '', err: '' };
  const status = await attempt(command, words, {
    say: (text) => {
      heard.out += text;
      return Promise.resolve();
    },
    complain: (text) => {
      heard.err += text;
      return Promise.resolve();
    },
    input: chunksOf(input),
    terminal,
  });
  return { status, ...heard };
}

async function* chunksOf(text: string): AsyncGenerator<string> {
  for (let at = 0; at < text.length; at += 100) yield await Promise.resolve(text.slice(at, at + 100));
}

/** Runs a command of `src/cli` in a process of its own, as a person would. */
export function runAsPerson(command: 'grade' | 'reference', words: readonly string[], input = ''): Promise<Ran> {
  const file = path.resolve(import.meta.dirname, `../../src/cli/${command}.ts`);
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [file, ...words]);
    const heard = { out: '', err: '' };
    child.stdout.setEncoding('utf8').on('data', (text: string) => {
      heard.out += text;
    });
    child.stderr.setEncoding('utf8').on('data', (text: string) => {
      heard.err += text;
    });
    child.on('error', reject);
    child.on('close', (status) => resolve({ status, ...heard }));
    child.stdin.end(input);
  });
}
