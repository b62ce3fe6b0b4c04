import type { HandIn } from '../../src/exchange/hand-in.ts';
import { readHandInJson } from '../../src/exchange/read-hand-in.ts';
import { refusalOf } from '../../src/exchange/refusal.ts';
import { handInJson } from '../../src/exchange/write-hand-in.ts';
import { placeText } from '../../src/grader/reading/fault.ts';
import { say } from '../../src/words/say.ts';

const reader = { language: 'en', unit: 'cm' } as const;

/** A right answer to the exercise `overlap`, by somebody invented. */
export const rightOverlap: HandIn = {
  student: 'Ilse Maringa',
  number: '17',
  set: { title: 'week 2', id: '0a1b2c3d' },
  exercise: 'overlap',
  order: { figure: { named: 'amara' }, style: { overlap: '1 1/4 in' }, house: {} },
  strictness: 'workroom',
  unit: 'cm',
  steps: [
    { verb: 'parallel', name: 'edge', to: 'centre-front', distance: 'overlap', side: 'left', answers: 'overlap-edge' },
  ],
  shown: [],
  hints: { 'overlap-edge': 1 },
  checks: 2,
  begun: '2026-02-14T09:05:00.000Z',
  saved: '2026-02-14T09:30:00.000Z',
};

// A file as it may come, with fields missing or of any kind.
// biome-ignore lint/suspicious/noExplicitAny: tests change it at will
export type Loose = any;

/** What is said of a hand-in that was changed after it was written: every fault, one line each. */
export function faultsAfter(change: (json: Loose) => void): string {
  const json = JSON.parse(JSON.stringify(handInJson(rightOverlap)));
  change(json);
  const read = readHandInJson(json);
  if (read.ok) return 'no fault';
  return read.faults.map(({ at, message }) => `${placeText(at) || '(file)'}: ${say(message, reader)}`).join('\n');
}

/** The one line that is said of a refused hand-in. */
export function refusalAfter(change: (json: Loose) => void): string {
  const json = JSON.parse(JSON.stringify(handInJson(rightOverlap)));
  change(json);
  const read = readHandInJson(json);
  return read.ok ? 'not refused' : say(refusalOf(read.faults), reader);
}
