import { mkdtempSync, readFileSync, rmSync, writeFileSync } from 'node:fs';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { describe, expect, test } from 'vitest';
import { CommandError } from '../../src/cli/command-error.ts';
import { exercisesFolder, loadExercise, parseExercise } from '../../src/cli/exercises.ts';

const text = readFileSync(path.join(exercisesFolder, 'overlap.yaml'), 'utf8');

function complaint(make: () => unknown): string {
  try {
    make();
  } catch (error) {
    if (error instanceof CommandError) return error.message;
    throw error;
  }
  return 'no complaint';
}

describe('an exercise file', () => {
  test('is read once', () => {
    expect(loadExercise('overlap')).toBe(loadExercise('overlap'));
  });

  test('is found by name only', () => {
    for (const name of ['../package', '../exercises/overlap', 'overlap.yaml', '', '__proto__']) {
      expect(complaint(() => loadExercise(name))).toMatch(/^No exercise is called/);
    }
  });

  test('is known by its file too, by its title, and under a name that ends otherwise', () => {
    const folder = mkdtempSync(path.join(tmpdir(), 'exercises-'));
    for (const file of ['top-button.yaml', 'vent.yml', 'Pocket line.yaml.txt'])
      writeFileSync(path.join(folder, file), '');
    const asked = (name: string) => complaint(() => loadExercise(name, folder));
    for (const name of ['top-button.yaml', 'exercises/top-button.yaml', 'Top Button', 'top_button']) {
      expect(asked(name)).toBe(`No exercise is called “${name}”. Did you mean “top-button”?`);
    }
    expect(asked('vent')).toMatchInlineSnapshot(
      `"The file “vent.yml” is no exercise: only names that end in .yaml are read. Name it vent.yaml."`,
    );
    expect(asked('pocket-line')).toContain('“Pocket line.yaml.txt” is no exercise');
    expect(asked('welt')).toBe('No exercise is called “welt”. There are: top-button.');
    rmSync(folder, { recursive: true });
  });

  test('with faults is told line by line, where an editor can go', () => {
    const faulty = text
      .replace('lesson: overlap', 'lesson: overlop')
      .replace('side: right, answers', 'side: left, answers')
      .replace('from: centre-front\n', 'from: center-front\n');
    const known = complaint(() => parseExercise('overlap', faulty));
    expect(known).toMatchInlineSnapshot(
      `"overlap.yaml:2:9: lesson: No lesson is called “overlop”. Did you mean “overlap”?"`,
    );
    expect(faulty.split('\n')[Number(/:(\d+):/.exec(known)?.[1]) - 1]).toContain('overlop');
    const mended = faulty.replace('overlop', 'overlap');
    expect(complaint(() => parseExercise('overlap', mended))).toMatchInlineSnapshot(
      `"overlap.yaml:49:11: checks 1 (overlap-edge), from: No object of the block or the reference is called “center-front”. Did you mean “centre-front”?"`,
    );
    expect(complaint(() => parseExercise('overlap', mended.replace('center', 'centre')))).toMatchInlineSnapshot(
      `"overlap.yaml:73:5: misreadings 1 (body-side): Done this way, the target “overlap-edge” still comes out right: of its checks “parallel” is off most, by 0 in on one of the orders tried, and 1/4 in is allowed at the most lenient. Replace a step that matters more, add a check that sees the difference, choose a finer tolerance, or narrow the ranges of the style."`,
    );
  });

  test('that is not YAML is told where it stops', () => {
    expect(complaint(() => parseExercise('overlap', text.replace('style:', 'style: [')))).toMatch(
      /^overlap\.yaml:\d+:\d+: /,
    );
    expect(complaint(() => parseExercise('overlap', ''))).toMatchInlineSnapshot(
      `"overlap.yaml:1:1: An exercise is a group of fields such as title, brief and targets; nothing was found."`,
    );
  });

  test.each([
    ['brackets', '['.repeat(20_000)],
    ['lines', Array.from({ length: 3000 }, (_, depth) => `${' '.repeat(depth)}a:`).join('\n')],
  ])('that goes down and down in %s is refused', (_, deep) => {
    expect(complaint(() => parseExercise('deep', deep))).toMatch(/^deep\.yaml:1:1: Groups lie within one another/);
  });

  test('that repeats itself without end is refused', () => {
    const bomb = ['a: &a [x, x, x, x, x, x, x, x, x]'];
    for (const [at, before] of ['ba', 'cb', 'dc', 'ed', 'fe']) {
      bomb.push(`${at}: &${at} [${Array.from({ length: 9 }, () => `*${before}`).join(', ')}]`);
    }
    expect(complaint(() => parseExercise('bomb', bomb.join('\n')))).toMatch(/^bomb\.yaml:1:4: What begins with “&”/);
  });
});
