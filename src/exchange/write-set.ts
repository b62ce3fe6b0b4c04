import { hashOf } from '../garment/seed.ts';
import { type ProblemSet, SET_FORMAT, SET_VERSION, type SetMark } from './set.ts';

/** The JSON of a problem set, fields in the order of docs/files.md; reading it gives the same set again. */
export function setJson(set: ProblemSet): Readonly<Record<string, unknown>> {
  const { title, note, exercises, figures, seed, strictness, house, feedback, checks, hints, due } = set;
  return {
    format: SET_FORMAT,
    version: SET_VERSION,
    title,
    note,
    exercises: exercises.map(({ exercise, marks }) => ({ exercise, marks })),
    figures,
    seed,
    strictness,
    house: Object.fromEntries(Object.entries(house).sort(([a], [b]) => (a < b ? -1 : 1))),
    feedback,
    checks,
    hints,
    due,
  };
}

/** The text of a set's file, set out to be read by people too. */
export function writeSet(set: ProblemSet): string {
  return `${JSON.stringify(setJson(set), null, 2)}\n`;
}

/** By what its hand-ins know a set: anything changed in it makes another. No proof against malice, which re-marking does not need. */
export function setMark(set: ProblemSet): SetMark {
  const hash = hashOf(JSON.stringify(setJson(set))) >>> 0;
  return { title: set.title, id: hash.toString(16).padStart(8, '0') };
}
