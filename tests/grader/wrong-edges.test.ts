import { describe, expect, test } from 'vitest';
import { loadExercise } from '../../src/cli/exercises.ts';
import type { Step } from '../../src/drafting/step.ts';
import { gradeDraft } from '../../src/grader/grade.ts';
import { invented, orderOn } from './tables.ts';

/** Checks of a target that are lost on some invented figure where steps of the reference are put otherwise. */
function lostWith(id: string, target: string, instead: readonly Step[]): readonly string[] {
  const exercise = loadExercise(id);
  const steps = exercise.reference.map((step) => instead.find(({ name }) => name === step.name) ?? step);
  const lost = invented.flatMap((figure) =>
    gradeDraft(exercise, orderOn(exercise, figure), steps, 'workroom').checks.filter(
      (check) => check.target === target && check.status !== 'within',
    ),
  );
  return [...new Set(lost.map(({ check }) => check))];
}

const collars = ['collar-single', 'collar-double', 'shawl'] as const;

describe('an edge that is right at its ends only', () => {
  test.each(collars)('%s: a neck edge drawn without the swing is seen to run beside the swung line', (id) => {
    const unswung: Step = { verb: 'parallel', name: 'edge-line', to: 'neck-line', through: 'neck-point' };
    expect(lostWith(id, 'collar-neck-edge', [unswung])).toEqual(expect.arrayContaining(['through', 'squareness']));
  });

  test('neck-edge: likewise', () => {
    const along = { verb: 'along', on: 'neck-line', from: 'neck-point', toward: 'up' } as const;
    const unswung: Step[] = [
      { ...along, name: 'edge-past', distance: 'back-neck + 1 in' },
      { ...along, name: 'edge-mid', distance: 'back-neck / 2' },
      {
        verb: 'curve',
        name: 'true-back',
        through: ['edge-past', 'edge-mid', 'neck-point'],
        leave: { along: 'neck-line' },
        arrive: { along: 'neck-line' },
      },
    ];
    expect(lostWith('neck-edge', 'collar-neck-edge', unswung)).toContain('through');
  });

  test.each(['collar-single', 'collar-double', 'collar-outline'])(
    '%s: an outer edge with a corner is no smooth one',
    (id) => {
      const cornered: Step = {
        verb: 'seam',
        name: 'outer-edge',
        run: ['outer-back', 'over-shoulder', 'collar-point'],
        answers: 'outer-edge',
      };
      expect(lostWith(id, 'outer-edge', [cornered])).toContain('smoothness');
    },
  );

  test('true-draped: an outer edge begun beyond the centre back is seen', () => {
    const instead: Step[] = [
      { verb: 'parallel', name: 'past-line', to: 'collar-centre-back', distance: '1 in', side: 'up' },
      {
        verb: 'curve',
        name: 'outer-edge',
        through: ['beyond', 'outer-mark-2', 'outer-mark-3', 'outer-mark-4'],
        leave: { square: 'collar-centre-back' },
        answers: 'outer-edge',
      },
    ];
    const exercise = loadExercise('true-draped');
    const before = exercise.reference.slice(0, -1);
    const steps: Step[] = [
      ...before,
      instead[0] as Step,
      { verb: 'foot', name: 'beyond', from: 'outer-start', on: 'past-line' },
      instead[1] as Step,
    ];
    for (const figure of invented) {
      const { checks } = gradeDraft(exercise, orderOn(exercise, figure), steps, 'workroom');
      const lost = checks.filter(({ target, status }) => target === 'outer-edge' && status !== 'within');
      expect(lost.map(({ check, marks }) => [check, marks])).toContainEqual(['through', 0]);
    }
  });

  /** The checks of the outer edge that a curve loses on some invented figure, led besides through marks off the straight between the right ones. */
  function lostBeside(id: string, off: readonly string[], fractions: readonly string[]): readonly string[] {
    const exercise = loadExercise(id);
    const at = exercise.reference.findIndex(({ name }) => name === 'outer-edge');
    const chord: Step = { verb: 'rule', name: 'chord', from: 'over-shoulder', to: 'collar-point' };
    const beside = fractions.flatMap((fraction, index): Step[] => [
      { verb: 'part', name: `on-${index}`, from: 'over-shoulder', to: 'collar-point', fraction },
      { verb: 'parallel', name: `out-${index}`, to: 'chord', distance: off[index] ?? '0 mm', side: 'left' },
      { verb: 'foot', name: `mark-${index}`, from: `on-${index}`, on: `out-${index}` },
    ]);
    const edge: Step = {
      verb: 'curve',
      name: 'outer-edge',
      through: ['outer-back', 'over-shoulder', ...fractions.map((_, index) => `mark-${index}`), 'collar-point'],
      leave: { square: 'collar-centre-back' },
      answers: 'outer-edge',
    };
    const steps = [...exercise.reference.slice(0, at), chord, ...beside, edge, ...exercise.reference.slice(at + 1)];
    const lost = invented.flatMap((figure) => {
      const { checks } = gradeDraft(exercise, orderOn(exercise, figure), steps, 'workroom');
      return checks.filter(({ target, status }) => target === 'outer-edge' && status === 'beyond');
    });
    return [...new Set(lost.map(({ check }) => check))];
  }

  // In a whole collar the length would charge a wrong swing a second time, where its own bulge is read.
  test.each([
    ['collar-single', 'shape'],
    ['collar-double', 'shape'],
    ['collar-outline', 'length'],
  ])('%s: an outer edge that bulges between its marks is seen by its %s', (id, check) => {
    expect(lostBeside(id, ['45 mm'], ['1/2'])).toContain(check);
  });

  test.each(['collar-single', 'collar-double', 'collar-outline'])(
    '%s: an outer edge that bends to and fro between its marks is a wavy one',
    (id) => {
      expect(lostBeside(id, ['14 mm', '-14 mm'], ['1/4', '3/4'])).toContain('inflection');
    },
  );

  test('true-draped: a neck edge that passes by the fourth mark is seen', () => {
    const past: Step = {
      verb: 'curve',
      name: 'long-edge',
      through: ['past-mark', 'neck-mark-2', 'neck-mark-3', 'neck-mark-5', 'neck-mark-6'],
    };
    expect(lostWith('true-draped', 'collar-neck-edge', [past])).toContain('through');
  });
});
