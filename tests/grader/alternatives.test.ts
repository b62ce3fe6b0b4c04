import { describe, expect, test } from 'vitest';
import { loadExercise } from '../../src/cli/exercises.ts';
import type { Step } from '../../src/drafting/step.ts';
import { people } from '../../src/garment/people.ts';
import { gradeDraft } from '../../src/grader/grade.ts';
import { say } from '../../src/words/say.ts';
import { byAngles, byMarks, byOtherTools, type Kind, lastThingsFirst, mirrored } from './alternative-collars.ts';
import { orderOn, sampled } from './tables.ts';

const capstones = [
  ['collar-single', 'single'],
  ['collar-double', 'double'],
  ['shawl', 'shawl'],
] as const;

const ways: readonly (readonly [string, (kind: Kind, reference: readonly Step[]) => readonly Step[]])[] = [
  ['with the last things first', (_, reference) => lastThingsFirst(reference)],
  ['by other tools', byOtherTools],
  ['on the other side of the roll line, and folded over', mirrored],
  ['from mark to mark, and joined from parts', byMarks],
  ['by angles, with a bowed lapel', byAngles],
];

const figures = [...people.map(({ figure }) => figure), ...sampled.slice(0, 12)];

// A right collar scores full whatever it is made with and in whatever order: nothing but where things come to lie is looked at.
describe.each(capstones)('%s', (id, kind) => {
  const exercise = loadExercise(id);

  test.each(ways)('drawn %s scores full on every figure', (_, way) => {
    const steps = way(kind, exercise.reference);
    for (const figure of figures) {
      const grade = gradeDraft(exercise, orderOn(exercise, figure), steps, 'workroom');
      const lost = grade.checks.filter(({ status }) => status !== 'within');
      expect(lost.map(({ target, check, off }) => `${target} ${check} ${off}`)).toEqual([]);
      expect(grade.problems.map((problem) => say(problem, { language: 'en', unit: 'cm' }))).toEqual([]);
      expect(grade.marks).toBe(grade.of);
      expect(grade.otherFigures.held).toBe(grade.otherFigures.tried);
    }
  });

  test('is not drawn twice the same way', () => {
    const drafts = ways.map(([, way]) =>
      JSON.stringify(way(kind, exercise.reference).map(({ name, verb }) => [name, verb])),
    );
    expect(new Set(drafts).size).toBe(ways.length);
    expect(drafts).not.toContain(JSON.stringify(exercise.reference.map(({ name, verb }) => [name, verb])));
  });
});
