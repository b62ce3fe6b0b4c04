import { expect, test } from 'vitest';
import type { Shape } from '../../src/drafting/shape.ts';
import { heading, point } from '../../src/geometry/point.ts';
import { leanOf } from '../../src/grader/lean.ts';
import { plainReading } from '../../src/grader/measures/reading.ts';
import { say } from '../../src/words/say.ts';

/** What is said of a line 3 degrees anticlockwise of the right one, and of one 3 degrees clockwise. */
function leans(degrees: number): readonly string[] {
  const right: Shape = {
    kind: 'line',
    line: { through: point(0, 0), direction: heading((degrees * Math.PI) / 180) },
  };
  return [93, 87].map((measured) => {
    const lean = leanOf(plainReading(measured, 90, 'deg'), right);
    return lean === null ? '' : say(lean, { language: 'en', unit: 'cm' });
  });
}

test.each([90, 270, 60, 130])('an upright line, drawn at %d°, leans at its top', (degrees) => {
  expect(leans(degrees)).toEqual(['toward the front edge at the top', 'toward the shoulder tip at the top']);
});

test.each([0, 180, 40, 350])('a level line, drawn at %d°, climbs or falls toward the shoulder tip', (degrees) => {
  expect(leans(degrees)).toEqual(['up toward the shoulder tip', 'down toward the shoulder tip']);
});

test('a curve leans nowhere', () => {
  expect(leanOf(plainReading(93, 90, 'deg'), { kind: 'length', length: 3 })).toBeNull();
});
