import { open } from 'node:fs/promises';
import { readSet } from '../exchange/read-set.ts';
import { type ProblemSet, SET_FORMAT } from '../exchange/set.ts';
import { setMark } from '../exchange/write-set.ts';
import { exerciseNames } from './exercises.ts';
import { filesOf } from './work.ts';

/** A set's file says what it is at its very beginning; so much of a file tells. */
const HEAD = 200;
const SAYS_SET = new RegExp(`^\\uFEFF?\\s*\\{\\s*"format"\\s*:\\s*"${SET_FORMAT}"`);

/** Whether a text, or the beginning of one, says of itself that it is a problem set. */
export function saysSet(text: string): boolean {
  return SAYS_SET.test(text.slice(0, HEAD));
}

/**
 * The problem set that lies among the work, as a teacher leaves it there; null where there is none, or where there are several
 * that differ. Files alone are looked into: a stream can be read once only.
 */
export async function setAmong(paths: readonly string[]): Promise<ProblemSet | null> {
  const exercises = exerciseNames();
  const found = new Map<string, ProblemSet>();
  for (const path of paths) {
    for await (const file of filesOf(path)) {
      const text = await setTextOf(file);
      const read = text === null ? null : readSet(text, exercises);
      if (read?.ok) found.set(setMark(read.set).id, read.set);
    }
  }
  const [only] = found.values();
  return found.size === 1 ? (only ?? null) : null;
}

/** The text of a file that says it is a set; null of any other, and where it cannot be read: that is told in its turn. */
async function setTextOf(file: string): Promise<string | null> {
  try {
    await using opened = await open(file);
    const { buffer, bytesRead } = await opened.read(Buffer.alloc(HEAD), 0, HEAD, 0);
    return saysSet(buffer.toString('utf8', 0, bytesRead)) ? await opened.readFile('utf8') : null;
  } catch {
    return null;
  }
}
