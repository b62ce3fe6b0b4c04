import { readFileSync } from 'node:fs';
import path from 'node:path';
import fc from 'fast-check';
import { expect, test } from 'vitest';
import { CommandError } from '../../../src/cli/command-error.ts';
import { exercisesFolder, parseExercise } from '../../../src/cli/exercises.ts';

const text = readFileSync(path.join(exercisesFolder, 'stand-point.yaml'), 'utf8');

/** One key pressed, or one character taken out, somewhere in the file. */
const slip = fc
  .record({
    at: fc.nat({ max: text.length - 1 }),
    key: fc.constantFrom(
      '',
      '"',
      "'",
      ':',
      '\t',
      '{',
      '}',
      '[',
      ' ',
      ',',
      '-',
      '#',
      '\n',
      '|',
      '>',
      '&',
      '*',
      '<',
      'q',
    ),
  })
  .map(({ at, key }) => ({ at, typed: text.slice(0, at) + key + text.slice(key === '' ? at + 1 : at) }));

test('a slip of the hand is taken for the author’s own, or told in sentences that say where', () => {
  fc.assert(
    fc.property(slip, ({ typed }) => {
      try {
        expect(parseExercise('mine', typed).id).toBe('mine');
      } catch (error) {
        if (!(error instanceof CommandError)) throw error;
        for (const line of error.message.split('\n')) expect(line).toMatch(/^mine\.yaml:\d+:\d+: .*[.?]$/s);
      }
    }),
    { numRuns: 200 },
  );
});
