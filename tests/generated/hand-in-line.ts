import { FILE_LENGTH } from '../../src/exchange/json.ts';
import { handInJson } from '../../src/exchange/write-hand-in.ts';
import type { Chance } from '../../src/garment/seed.ts';
import type { Draft } from './drafts.ts';
import type { Kind } from './kinds.ts';

/** The line that a draft is handed in on, whole or spoilt as its kind is. Its student's number is its place in the stream. */
export function handInLine(kind: Kind, at: number, draft: Draft, chance: Chance): string {
  const json = handInJson({
    student: `Student ${at}`,
    number: String(at),
    set: null,
    exercise: kind === 'unknown' ? 'sleeve' : draft.exercise.id,
    order: { figure: { sampled: 'anyone', seed: draft.seed }, style: {}, house: {} },
    strictness: 'workroom',
    unit: chance.whole(0, 1) === 0 ? 'cm' : 'in',
    steps: draft.steps,
    shown: [],
    hints: {},
    checks: chance.whole(0, 9),
    begun: null,
    saved: null,
  });
  const text = JSON.stringify(json);
  if (kind === 'damaged') return text.slice(0, chance.whole(1, text.length - 1));
  if (kind === 'oversized') return `${text}${' '.repeat(FILE_LENGTH)}`;
  return text;
}
