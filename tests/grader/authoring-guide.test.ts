import { readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { exerciseNames, parseExercise } from '../../src/cli/exercises.ts';
import type { Strictness } from '../../src/grader/tolerance.ts';
import { faultsOn, unnamedOn } from './proof.ts';
import { invented } from './tables.ts';

const guide = readFileSync(new URL('../../docs/authoring.md', import.meta.url), 'utf8');

/** The file that an author has who copies every block of the guide, one under the other. */
const file = [...guide.matchAll(/^```yaml\n(.*?)^```$/gms)].map(([, block]) => block).join('\n');

const strictnesses: readonly Strictness[] = ['learner', 'workroom', 'sample-room'];

describe('the exercise of the guide for authors', () => {
  test('is none of the course’s', () => {
    expect(exerciseNames()).not.toContain('top-button');
  });

  test('is right on every invented figure, and its misreadings are named', () => {
    const exercise = parseExercise('top-button', file);
    expect(exercise.misreadings).toHaveLength(3);
    for (const figure of invented) {
      expect(faultsOn(exercise, figure, exercise.house)).toEqual([]);
      expect(unnamedOn(exercise, figure, exercise.house, strictnesses)).toEqual([]);
    }
  });

  test('has the fault that the guide shows, in those words and on that line', () => {
    const [shown = ''] = guide.match(/^ {4}top-button\.yaml:.*$/m) ?? [];
    expect(shown).not.toBe('');
    expect(() => parseExercise('top-button', file.replace('one: centre-front', 'one: centre-frnt'))).toThrow(
      shown.trim(),
    );
  });
});
