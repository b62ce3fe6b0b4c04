import { readFileSync } from 'node:fs';
import path from 'node:path';
import { exercisesFolder, parseExercise } from '../../src/cli/exercises.ts';
import { markWork } from '../../src/exchange/mark-work.ts';
import type { Exercise } from '../../src/grader/exercise.ts';
import { inTurn, short } from './measure/rounds.ts';
import { collarLine, drawnOtherwise, inOwnWords, misreadSteps, wholeCollar } from './measure/whole-collar.ts';

/**
 * Marking a whole collar that was handed in, the draft tried on six other figures, against parsing its bytes. Every hand-in
 * is of another figure. In a stream the grader remembers what earlier drafts made on the other figures; "in own words" is a
 * draft that calls nothing as any other does; one "drawn otherwise" does what no other does, so that it has to be tried on every
 * figure; "alone" is one with nothing remembered: the exercise has just been read.
 */
const ROUNDS = 200;
/** Few enough that a round is done before a busy machine turns to something else. */
const PIECES = 5;

const text = readFileSync(path.join(exercisesFolder, `${wholeCollar.id}.yaml`), 'utf8');

const right = (): typeof wholeCollar.reference => wholeCollar.reference;
const kinds = {
  right: (seed: number) => collarLine(String(seed), right()),
  'right, in own words': (seed: number) => collarLine(String(seed), inOwnWords(right(), String(seed))),
  wrong: (seed: number) => collarLine(String(seed), misreadSteps(seed)),
  'wrong, in own words': (seed: number) => collarLine(String(seed), inOwnWords(misreadSteps(seed), String(seed))),
  'right, drawn otherwise': (seed: number) => collarLine(String(seed), drawnOtherwise(right(), seed)),
  'wrong, drawn otherwise': (seed: number) => collarLine(String(seed), drawnOtherwise(misreadSteps(seed), seed)),
};

/** Lines that nobody has seen yet: each is made for one round, and not in the time that is taken. */
function freshLines(make: (seed: number) => string, pieces: number): (round: number) => readonly string[] {
  const all = Array.from({ length: Math.ceil(ROUNDS * 1.25) + 1 }, (_, round) =>
    Array.from({ length: pieces }, (_unused, at) => make(round * pieces + at)),
  );
  return (round) => all[round] ?? [];
}

function mark(lines: readonly string[], exercise: Exercise): void {
  for (const line of lines) {
    const marked = markWork(line, { load: () => exercise, set: null, strictness: null });
    if (!marked.ok) throw new Error(`A hand-in of the bench was refused: ${JSON.stringify(marked.message)}`);
  }
}

const rows = Object.entries(kinds).flatMap(([kind, make]) => {
  const lines = freshLines(make, PIECES);
  const alone = freshLines(make, 1);
  const exercises = Array.from({ length: Math.ceil(ROUNDS * 1.25) + 1 }, () => parseExercise(wholeCollar.id, text));
  const took = inTurn(
    {
      parse: (round) => {
        for (const line of lines(round)) JSON.parse(line);
      },
      stream: (round) => mark(lines(round), wholeCollar),
      alone: (round) => mark(alone(round), exercises[round] as Exercise),
    },
    ROUNDS,
  );
  const parse = (took['parse'] ?? Number.NaN) / PIECES;
  const stream = (took['stream'] ?? Number.NaN) / PIECES;
  const single = took['alone'] ?? Number.NaN;
  return [
    { draft: kind, found: 'in a stream', ms: short(stream), 'times JSON.parse': short(stream / parse) },
    { draft: kind, found: 'alone', ms: short(single), 'times JSON.parse': short(single / parse) },
  ];
});
console.table(rows);
