import { deflateRawSync } from 'node:zlib';
import { afterAll, describe, expect, test } from 'vitest';
import { exerciseNames, loadExercise } from '../../src/cli/exercises.ts';
import { freeHandOf } from '../../src/exchange/class/alike/free-hand.ts';
import { classWorkOf } from '../../src/exchange/class/class-work.ts';
import { sketchOf } from '../../src/exchange/class/laid/sketch.ts';
import { sizeOf } from '../../src/exchange/class/laid/stray.ts';
import { workRow } from '../../src/exchange/grade-row.ts';
import type { HandIn } from '../../src/exchange/hand-in.ts';
import { markHandIn, markWork } from '../../src/exchange/mark-work.ts';
import type { MarkingFile } from '../../src/exchange/marking-file/marking-file.ts';
import { readMarking } from '../../src/exchange/marking-file/read-marking.ts';
import { writeMarking } from '../../src/exchange/marking-file/write-marking.ts';
import { ownTotal } from '../../src/exchange/notes/noted-marks.ts';
import { readSet } from '../../src/exchange/read-set.ts';
import { refusalOf } from '../../src/exchange/refusal.ts';
import type { ProblemSet } from '../../src/exchange/set.ts';
import { readSetLink, setLink } from '../../src/exchange/set-link.ts';
import { setOrder } from '../../src/exchange/set-order.ts';
import { handInJson, writeHandIn } from '../../src/exchange/write-hand-in.ts';
import { setJson, setMark, writeSet } from '../../src/exchange/write-set.ts';
import { chanceOf } from '../../src/garment/seed.ts';
import { unknownName } from '../../src/grader/reading/unknown.ts';
import type { Message } from '../../src/words/message.ts';
import { say } from '../../src/words/say.ts';
import { damagedJson, damagedText } from './damage.ts';

/**
 * Damaged and hostile sets, links, hand-ins, drafts and marking files: each is read or refused in a sentence, and nothing else happens.
 * FUZZ=100000 tries so many of all kinds together; the slowest is told.
 */
const CASES = Number(process.env['FUZZ'] ?? 4000) / 10;
const SEED = process.env['PROPERTY_SEED'] ?? 20261125;

const exercises = exerciseNames();
const reader = { language: 'en', unit: 'in' } as const;
const set: ProblemSet = {
  title: 'Week 2',
  note: 'Two lines,\nthe second shorter.',
  exercises: exercises.map((exercise) => ({ exercise, marks: 10 })),
  figures: { each: 'women' },
  seed: 'fuzz',
  strictness: 'workroom',
  house: { 'stand-rule': 'full' },
  feedback: 'place',
  checks: 3,
  hints: true,
  due: '2026-03-06T17:00:00.000Z',
};
const link = setLink(set);
const hash = link.ok ? link.hash : '';

function load(name: string) {
  return exercises.includes(name) ? loadExercise(name) : unknownName('what.exercise', name, exercises);
}

// Read once, so that the slowest case is not the one that reads the exercise.
for (const name of exercises) loadExercise(name);

/** A right hand-in of the exercise whose turn it is. */
function handInAt(turn: number): HandIn {
  const exercise = loadExercise(exercises[turn % exercises.length] ?? '');
  const student = { student: 'Ilse Maringa', number: '' };
  return {
    ...student,
    set: setMark(set),
    exercise: exercise.id,
    order: setOrder(set, exercise, student),
    strictness: 'workroom',
    unit: 'cm',
    steps: exercise.reference,
    shown: [],
    hints: {},
    checks: 1,
    begun: '2026-03-01T09:00:00.000Z',
    saved: '2026-03-02T09:00:00.000Z',
  };
}

const slowest = { ms: 0, what: '' };
const counts = { read: 0, refused: 0 };

/** Tries one case; what is said of a refusal is a sentence. */
function tryOne(what: string, read: () => Message | null): void {
  const start = performance.now();
  const refusal = read();
  const ms = performance.now() - start;
  if (ms > slowest.ms) Object.assign(slowest, { ms, what });
  counts[refusal === null ? 'read' : 'refused'] += 1;
  if (refusal !== null) expect(say(refusal, reader)).toMatch(/^\S+ [\s\S]*[.)?”]$/u);
}

function setRefusal(text: string): Message | null {
  const read = readSet(text, exercises);
  return read.ok ? null : refusalOf(read.faults);
}

function linkRefusal(text: string): Message | null {
  const read = readSetLink(text, exercises);
  return read.ok ? null : refusalOf(read.faults);
}

function handInRefusal(text: string): Message | null {
  const marked = markWork(text, { load, set, strictness: null });
  if (!marked.ok) {
    expect(say(marked.message, reader)).not.toContain('stumbled');
    return marked.message;
  }
  const row = workRow('a.json', marked, set);
  expect(row.marks).toBeGreaterThanOrEqual(0);
  expect(row.marks).toBeLessThanOrEqual(row.of);
  // What the report on a class keeps of it.
  const { freeHand } = classWorkOf(row, freeHandOf(marked));
  expect(freeHand === null || freeHand.free >= 0).toBe(true);
  for (const stray of Object.values(sketchOf(marked).strays)) expect(Number.isFinite(sizeOf(stray))).toBe(true);
  return null;
}

/** A marking file with two pieces of work, a mark by hand and comments. */
function markingAt(turn: number): MarkingFile {
  const [first, second] = [handInAt(turn), handInAt(turn + 1)];
  const mark = { marks: 1, of: 2, reason: 'Drawn on paper first.' };
  const target = loadExercise(first.exercise).targets[0]?.name ?? '';
  return {
    set,
    work: [
      { found: 'class.ndjson:1', handIn: first, marks: { [target]: mark }, comment: 'Well drawn.' },
      { found: 'class.ndjson:2', handIn: second, marks: {}, comment: '' },
    ],
    students: [
      {
        student: 'Ilse Maringa',
        number: '',
        comment: 'Go on so.',
        until: turn % 2 === 0 ? null : '2026-03-13T17:00:00.000Z',
      },
    ],
    unread: [{ found: 'cut.json', begun: '', why: 'It is cut off.' }],
    list: 'Ilse Maringa\nTam Okoro, 18',
    counts: turn % 3 === 0 ? 'best' : 'last',
    saved: '2026-03-08T09:00:00.000Z',
  };
}

function markingRefusal(text: string): Message | null {
  const read = readMarking(text, exercises);
  if (!read.ok) return refusalOf(read.faults);
  for (const { handIn, marks, comment } of read.file.work) {
    const marked = markHandIn(handIn, { load, set: read.file.set, strictness: null });
    if (marked.ok) {
      const row = workRow('a.json', marked, read.file.set);
      const total = ownTotal(row.checks, { marks, comment }) ?? 0;
      expect(total).toBeGreaterThanOrEqual(0);
      expect(total).toBeLessThanOrEqual(row.of);
    } else expect(say(marked.message, reader)).not.toContain('stumbled');
  }
  // What was read can be written, and read again.
  expect(readMarking(writeMarking(read.file), exercises).ok).toBe(true);
  return null;
}

/** Damage by the letter, and by the part. */
const kinds: readonly [string, (turn: number, chance: ReturnType<typeof chanceOf>) => Message | null][] = [
  ['sets by the letter', (_, chance) => setRefusal(damagedText(writeSet(set), chance))],
  ['sets by the part', (_, chance) => setRefusal(JSON.stringify(damagedJson(setJson(set), chance)))],
  ['links by the letter', (_, chance) => linkRefusal(damagedText(hash, chance))],
  [
    'links of damaged sets',
    (_, chance) =>
      linkRefusal(`#set=${deflateRawSync(JSON.stringify(damagedJson(setJson(set), chance))).toString('base64url')}`),
  ],
  ['hand-ins by the letter', (turn, chance) => handInRefusal(damagedText(writeHandIn(handInAt(turn)), chance))],
  [
    'hand-ins by the part',
    (turn, chance) => handInRefusal(JSON.stringify(damagedJson(handInJson(handInAt(turn)), chance))),
  ],
  [
    'drafts by the part',
    (turn, chance) => {
      const handIn = handInAt(turn);
      return handInRefusal(JSON.stringify({ ...handInJson(handIn), steps: damagedJson(handIn.steps, chance) }));
    },
  ],
  [
    'drafts of another exercise',
    (turn, chance) => {
      const handIn = handInAt(turn);
      const other = handInAt(chance.whole(0, exercises.length - 1));
      return handInRefusal(JSON.stringify({ ...handInJson(handIn), steps: damagedJson(other.steps, chance) }));
    },
  ],
  ['marking files by the letter', (turn, chance) => markingRefusal(damagedText(writeMarking(markingAt(turn)), chance))],
  [
    'marking files by the part',
    (turn, chance) => markingRefusal(JSON.stringify(damagedJson(JSON.parse(writeMarking(markingAt(turn))), chance))),
  ],
];

describe('damaged and hostile', () => {
  test.each(kinds)(
    '%s are read or refused in a sentence',
    (kind, tryIt) => {
      for (let turn = 0; turn < CASES; turn += 1) {
        const name = `${SEED}/${kind}/${turn}`;
        tryOne(name, () => tryIt(turn, chanceOf(name)));
      }
    },
    3_600_000,
  );
});

afterAll(() => {
  // Nothing of a file was ever run.
  expect('harmed' in globalThis).toBe(false);
  console.log(
    `${counts.read} read, ${counts.refused} refused; the slowest took ${Math.round(slowest.ms)} ms: ${slowest.what}`,
  );
});
