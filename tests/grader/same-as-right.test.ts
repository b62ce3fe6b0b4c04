import { expect, test } from 'vitest';
import { people } from '../../src/garment/people.ts';
import { takeReading } from '../../src/grader/measures/take.ts';
import { referenceOn } from '../../src/grader/reference-on.ts';
import { holdsOfItself } from '../../src/grader/same-as-right.ts';
import { exercises, orderOn, tableFor } from './tables.ts';

/** Every exercise with its reference drawn on every invented figure. */
const drawn = exercises.flatMap((exercise) =>
  people.map(({ figure }) => ({
    exercise,
    reference: referenceOn(exercise, tableFor(exercise, orderOn(exercise, figure))),
  })),
);

test('what is said to hold of the right answer itself is what its reading finds, on every invented figure', () => {
  const told = new Set<string>();
  for (const { exercise, reference } of drawn)
    for (const check of exercise.checks) {
      const right = reference.shapes.get(reference.answers.get(check.target) ?? '');
      if (right === undefined || !holdsOfItself(check, right, reference)) continue;
      told.add(check.measure);
      const reading = takeReading(check, { answer: right, right, reference });
      expect(reading, `${exercise.id}, ${check.target}, ${check.measure}`).not.toBeNull();
      expect(reading?.measured).toBeCloseTo(reading?.expected ?? Number.NaN, 9);
    }
  expect([...told].sort()).toEqual([
    'bend',
    'distance',
    'inflection',
    'length',
    'level',
    'line',
    'position',
    'shape',
    'squareness',
  ]);
});

test('nothing is told of a right answer where what it is measured from is not there', () => {
  const nothing = { shapes: new Map(), answers: new Map() };
  const point = { kind: 'point', point: { x: 1, y: 2 } } as const;
  const checks = exercises.flatMap((exercise) => exercise.checks).filter(({ measure }) => measure === 'distance');
  expect(checks.length).toBeGreaterThan(0);
  for (const check of checks) expect(holdsOfItself(check, point, nothing)).toBe(false);
});
