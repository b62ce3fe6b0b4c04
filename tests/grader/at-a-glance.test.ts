import fc from 'fast-check';
import { expect, test } from 'vitest';
import type { Shape } from '../../src/drafting/shape.ts';
import { holdsAtAGlance } from '../../src/grader/at-a-glance.ts';
import { offOf, statusOf } from '../../src/grader/bounds.ts';
import type { Check } from '../../src/grader/exercise.ts';
import { bendsBackBy } from '../../src/grader/measures/fairness.ts';
import { takeReading } from '../../src/grader/measures/take.ts';

const point = fc.record({ x: fc.integer({ min: -200, max: 200 }), y: fc.integer({ min: -200, max: 200 }) });

/** A curve of one to three pieces that go on from each other, with or without corners. */
const curve = fc
  .tuple(point, fc.array(fc.tuple(point, point, point), { minLength: 1, maxLength: 3 }))
  .map(([start, pieces]): Extract<Shape, { kind: 'curve' }> => {
    let p0 = start;
    const path = pieces.map(([p1, p2, p3]) => {
      const piece = { p0, p1, p2, p3 };
      p0 = p3;
      return piece;
    });
    return { kind: 'curve', path };
  });

const check = { measure: 'inflection', target: 'edge', tolerance: 'mark', most: '1 mm' } as Check;
const nowhere = { shapes: new Map(), answers: new Map() };

const readingOf = (answer: Shape) => takeReading(check, { answer, right: answer, reference: nowhere });

test('how far a curve bends back is found without stations as its reading finds it', () => {
  fc.assert(
    fc.property(curve, (answer) => {
      expect(bendsBackBy(answer.path)).toBeCloseTo(readingOf(answer)?.measured ?? Number.NaN, 5);
    }),
    { numRuns: 1000 },
  );
});

test('what holds at a glance is within its tolerance, and much is seen so', () => {
  let seen = 0;
  fc.assert(
    fc.property(curve, fc.double({ min: 0, max: 20, noNaN: true }), (answer, most) => {
      const bounds = { least: null, most };
      if (!holdsAtAGlance(check, answer, answer, bounds, 3)) return;
      seen += 1;
      const reading = readingOf(answer);
      expect(reading && statusOf(offOf(reading, bounds), 3)).toBe('within');
    }),
    { numRuns: 1000 },
  );
  expect(seen).toBeGreaterThan(100);
});

test('nothing is seen of other checks, of a range that begins somewhere, and of what is no curve', () => {
  const straight: Shape = {
    kind: 'curve',
    path: [{ p0: { x: 0, y: 0 }, p1: { x: 10, y: 0 }, p2: { x: 20, y: 0 }, p3: { x: 30, y: 0 } }],
  };
  const mark: Shape = { kind: 'point', point: { x: 0, y: 0 } };
  const bounds = { least: null, most: 1 };
  expect(holdsAtAGlance(check, straight, straight, bounds, 3)).toBe(true);
  expect(holdsAtAGlance({ ...check, measure: 'bow' } as Check, straight, straight, bounds, 3)).toBe(false);
  expect(holdsAtAGlance(check, straight, straight, { least: 0, most: 1 }, 3)).toBe(false);
  expect(holdsAtAGlance(check, straight, straight, { least: null, most: null }, 3)).toBe(false);
  expect(holdsAtAGlance(check, mark, straight, bounds, 3)).toBe(false);
  expect(holdsAtAGlance(check, straight, mark, bounds, 3)).toBe(false);
});
