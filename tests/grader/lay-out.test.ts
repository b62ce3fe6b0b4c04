import { expect, test } from 'vitest';
import { loadExercise } from '../../src/cli/exercises.ts';
import type { Step } from '../../src/drafting/step.ts';
import { people } from '../../src/garment/people.ts';
import { distance, type Point } from '../../src/geometry/point.ts';
import type { Exercise } from '../../src/grader/exercise.ts';
import { gradeDraft } from '../../src/grader/grade.ts';
import { layOut } from '../../src/grader/lay-out.ts';
import { say } from '../../src/words/say.ts';
import { orderOn, tableFor } from './tables.ts';

const [regular, tall] = people;
if (regular === undefined || tall === undefined) throw new Error('no people');

const given: readonly Step[] = [
  { verb: 'parallel', name: 'edge', to: 'centre-front', distance: 'overlap', side: 'left' },
  { verb: 'cross', name: 'corner', one: 'edge', other: 'waist' },
  { verb: 'tape', name: 'across', from: 'corner', to: 'neck-point' },
];
const bare = loadExercise('overlap');
const drawnOn: Exercise = { ...bare, given };
const shaking: Exercise = { ...drawnOn, shaken: { marks: ['corner'], by: '2 mm' } };

const cornerOn = (exercise: Exercise, person = regular): Point => {
  const shape = tableFor(exercise, orderOn(exercise, person.figure)).shapes.get('corner');
  return shape?.kind === 'point' ? shape.point : { x: Number.NaN, y: Number.NaN };
};

test('what is given lies on the table before the first step, on every figure, and can be used', () => {
  const { shapes, measures } = tableFor(drawnOn, orderOn(drawnOn, regular.figure));
  expect(cornerOn(drawnOn)).toEqual({ x: expect.closeTo(-31.75, 12), y: 0 });
  expect(shapes.get('edge')?.kind).toBe('line');
  const neck = shapes.get('neck-point');
  const straight = neck?.kind === 'point' ? distance(cornerOn(drawnOn), neck.point) : Number.NaN;
  expect(measures.get('across')).toEqual({ dimension: 'length', value: expect.closeTo(straight, 12) });
});

test('what is given answers nothing', () => {
  const grade = gradeDraft(drawnOn, orderOn(drawnOn, regular.figure), [], 'workroom');
  expect(new Set(grade.checks.map(({ status }) => status))).toEqual(new Set(['missing']));
});

test('a given step that cannot be carried out keeps the order off the table, and says why', () => {
  const broken: Exercise = { ...bare, given: [{ verb: 'cross', name: 'c', one: 'centre-front', other: 'edge' }] };
  const laid = layOut(broken, orderOn(broken, regular.figure));
  expect(laid.ok ? '' : say(laid.message, { language: 'en', unit: 'cm' })).toMatchInlineSnapshot(
    `"Nothing on the sheet is called “edge”. Choose something that is there."`,
  );
});

test('shaken marks lie off by no more than they may, each figure’s in its own place, and always there', () => {
  const off = people.map((person) => {
    const [steady, shaken] = [cornerOn(drawnOn, person), cornerOn(shaking, person)];
    expect(cornerOn(shaking, person)).toEqual(shaken);
    return { x: shaken.x - steady.x, y: shaken.y - steady.y };
  });
  for (const by of off) expect(Math.hypot(by.x, by.y)).toBeLessThanOrEqual(2);
  expect(new Set(off.map(({ x }) => x)).size).toBe(people.length);
  // They go every way: a dozen marks that all lay to one side would be no shake.
  for (const way of [Math.min, Math.max]) {
    expect(Math.abs(way(...off.map(({ x }) => x)))).toBeGreaterThan(0.3);
    expect(Math.abs(way(...off.map(({ y }) => y)))).toBeGreaterThan(0.3);
  }
});

test('only the marks that are named are shaken', () => {
  const { shapes } = tableFor(shaking, orderOn(shaking, tall.figure));
  const steady = tableFor(drawnOn, orderOn(drawnOn, tall.figure));
  expect(shapes.get('edge')).toEqual(steady.shapes.get('edge'));
  expect(tableFor(shaking, orderOn(shaking, tall.figure)).measures).toEqual(steady.measures);
});
