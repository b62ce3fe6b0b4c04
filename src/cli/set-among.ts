import { open } from 'node:fs/promises';
import { readSet } from '../exchange/read-set.ts';
import { SET_LENGTH, saysSet } from '../exchange/says-set.ts';
import type { ProblemSet } from '../exchange/set.ts';
import { setMark } from '../exchange/write-set.ts';
import { exerciseNames } from './exercises.ts';
import { filesOf } from './work.ts';

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
    if ((await opened.stat()).size > SET_LENGTH) return null;
    const text = await opened.readFile('utf8');
    return saysSet(text) ? text : null;
  } catch {
    return null;
  }
}
