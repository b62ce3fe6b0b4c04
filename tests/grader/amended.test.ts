import { describe, expect, test } from 'vitest';
import { loadExercise } from '../../src/cli/exercises.ts';
import type { Step } from '../../src/drafting/step.ts';
import { people } from '../../src/garment/people.ts';
import { gradeDraft } from '../../src/grader/grade.ts';
import { say } from '../../src/words/say.ts';
import { orderOn } from './tables.ts';

/** What is named at a target of a draft that is the reference but for one step, and what is said of it first. */
function told(name: string, target: string, step: string, change: Readonly<Record<string, string>>) {
  const exercise = loadExercise(name);
  const order = orderOn(exercise, people[0]?.figure ?? never());
  const steps = exercise.reference.map((one) => (one.name === step ? ({ ...one, ...change } as Step) : one));
  const grade = gradeDraft(exercise, order, steps, 'workroom');
  const wrong = grade.checks.filter((check) => check.target === target && check.status !== 'within');
  const [first] = grade.reports.find((report) => report.target === target)?.sentences ?? [];
  return { ids: [...new Set(wrong.map(({ misreading }) => misreading))], says: first ? say(first, reader) : '' };
}

const reader = { language: 'en', unit: 'cm' } as const;

describe('a length in the wrong unit', () => {
  test.each([
    ['overlap', 'overlap-edge', 'overlap-edge', '3.2 in', '3.2 cm'],
    ['break-point', 'overlap-edge', 'overlap-edge', '1 1/4 cm', '1 1/4 in'],
    ['overlap', 'overlap-edge', 'overlap-edge', '32 cm', '32 mm'],
    ['overlap', 'overlap-edge', 'overlap-edge', '3.2 mm', '3.2 cm'],
    // A step that answers nothing by itself.
    ['roll-line', 'break-point', 'break-level', '3.8 in', '3.8 cm'],
  ])('%s: the %s is told that %s, %s, should be %s', (exercise, target, step, wrote, meant) => {
    const { ids, says } = told(exercise, target, step, { distance: wrote });
    expect(ids).toEqual(['wrong-unit']);
    expect(says).toContain(`says ${wrote}, and with ${meant} it would be right`);
  });

  test('which step, what stands there and what should', () => {
    expect(told('roll-line', 'break-point', 'break-level', { distance: '3.8 in' }).says).toMatchInlineSnapshot(
      `"Your break point is off by a unit, and by nothing else: step 2 says 3.8 in, and with 3.8 cm it would be right. Write the unit that the order has, or the name of the measure in place of a figure."`,
    );
  });

  test('is told in the exercise’s own words where it has some', () => {
    expect(told('overlap', 'overlap-edge', 'overlap-edge', { distance: '1 1/4 cm' }).ids).toEqual([
      'inches-as-centimetres',
    ]);
  });

  test('half of a length is not taken for one read in the wrong unit, near as the two may lie', () => {
    expect(told('roll-line', 'overlap-edge', 'overlap-edge', { distance: 'overlap / 2' }).ids).toEqual(['halved']);
  });
});

describe('a seam allowance added', () => {
  test('is called that, and not by another measure that lies as far', () => {
    const { ids, says } = told('roll-line', 'stand-point', 'stand-point', { distance: 'stand-by-rule + 1 cm' });
    expect(ids).toEqual(['something-added']);
    expect(says).toMatchInlineSnapshot(
      `"Without the 1 cm added in step 4 your stand point would be right. If that is a seam allowance, leave it out: a draft is net, its lines are the ones that are sewn, and the allowance comes when the pattern is cut."`,
    );
  });

  test('is not seen in more or less than allowances are wide', () => {
    for (const added of ['3 mm', '5 cm'])
      expect(told('overlap', 'overlap-edge', 'overlap-edge', { distance: `overlap + ${added}` }).ids).not.toContain(
        'something-added',
      );
  });

  test('is not seen in a sum that is wrong without it too', () => {
    const { ids } = told('overlap', 'overlap-edge', 'overlap-edge', { distance: 'overlap * 3 + 1 cm' });
    expect(ids).toEqual([null]);
  });
});

describe('the opposite way', () => {
  test.each([
    ['lapel-worn', 'lapel-point-worn', 'lapel-reach', { side: 'left' }, 'goes to the left. Let it go to the right.'],
    ['notch-gorge', 'gorge-corner', 'gorge-corner', { toward: 'up' }, 'goes upward. Let it go downward.'],
  ])('%s: the %s, gone wrong at %s', (exercise, target, step, change, ending) => {
    const { ids, says } = told(exercise, target, step, change);
    expect(ids).toEqual(['opposite-way']);
    expect(says).toContain(ending);
  });

  test('is not told where it was measured from another mark, though the other way would mend it', () => {
    const { ids } = told('neck-edge', 'collar-centre-back', 'mid-back', { from: 'back-neck-point' });
    expect(ids).toEqual([null]);
  });

  test('is told in the exercise’s own words where it has some', () => {
    expect(told('overlap', 'overlap-edge', 'overlap-edge', { side: 'right' }).ids).toEqual(['body-side']);
    expect(told('swing', 'back-line', 'back-line', { turn: 'anticlockwise' }).ids).toEqual(['wrong-way']);
  });
});

test('what an earlier answer was done wrong by is not told again of a later one', () => {
  const { ids } = told('roll-line', 'roll-line', 'stand-point', { distance: '3.2 in' });
  expect(ids).toEqual([]);
});

function never(): never {
  throw new Error('There is no such figure.');
}
