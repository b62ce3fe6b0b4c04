import { expect, test } from 'vitest';
import type { Shape } from '../../src/drafting/shape.ts';
import type { Sheet } from '../../src/drafting/sheet.ts';
import { type Cubic, straight } from '../../src/geometry/cubic.ts';
import { point } from '../../src/geometry/point.ts';
import { answerTo } from '../../src/grader/answer.ts';
import type { Target } from '../../src/grader/exercise.ts';

const edge: Target = { name: 'edge', makes: 'line', hints: ['', '', ''] };

function answered(path: readonly Cubic[]) {
  const shapes = new Map<string, Shape>([['drawn', { kind: 'curve', path }]]);
  const sheet: Sheet = { shapes, measures: new Map(), answers: new Map([['edge', 'drawn']]), problems: [] };
  return answerTo(edge, sheet);
}

const [foot, middle, head] = [point(-30, 0), point(-30, 200), point(-30, 400)];

test('a straight seam serves as the line it lies on', () => {
  expect(answered([straight(foot, middle), straight(middle, head)])).toMatchObject({
    found: 'right-kind',
    shape: { kind: 'line', line: { through: { x: -30 }, direction: { x: 0, y: 1 } } },
  });
});

test('a curve that bows by a hair, or a run that comes back to where it began, is no line', () => {
  const bowed = { ...straight(foot, head), p1: point(-30.001, 130) };
  const wrong = { found: 'wrong-kind', kind: 'curve' };
  expect(answered([bowed])).toMatchObject(wrong);
  expect(answered([straight(foot, middle), straight(middle, point(-31, 400))])).toMatchObject(wrong);
  expect(answered([straight(foot, head), straight(head, foot)])).toMatchObject(wrong);
});
