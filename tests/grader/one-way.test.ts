import { describe, expect, test } from 'vitest';
import { loadExercise } from '../../src/cli/exercises.ts';
import type { Step } from '../../src/drafting/step.ts';
import { isRange } from '../../src/grader/bounds.ts';
import { fillers } from '../../src/grader/fillers.ts';
import { gradeDraft } from '../../src/grader/grade.ts';
import { written } from '../../src/words/message.ts';
import { say } from '../../src/words/say.ts';
import { beyondRange, nudge } from './nudge.ts';
import { rightDraft } from './one-slip.ts';
import { rightSubject, standingOf, withAnswer } from './standing.ts';
import { exercises, invented, orderOn, referenceSheet, tableFor } from './tables.ts';

const reader = { language: 'en', unit: 'cm' } as const;
const figure = invented[0] ?? never();

/** What is said of a target where one step of the reference is changed. */
function saidOf(id: string, target: string, name: string, change: object): string {
  const exercise = loadExercise(id);
  const steps = rightDraft(exercise, figure).map((step) =>
    step.name === name ? ({ ...step, ...change } as Step) : step,
  );
  const { reports } = gradeDraft(exercise, orderOn(exercise, figure), steps, 'workroom');
  const report = reports.find((one) => one.target === target) ?? never();
  return report.sentences.map((sentence) => say(sentence, reader)).join(' ');
}

describe('what a fault does on the body is told for the way it went, and for no other', () => {
  test.each<[string, string, string, object, readonly [string, string]]>([
    ['overlap', 'overlap-edge', 'overlap-edge', { distance: 'overlap - 9 mm' }, ['Too little', 'Too much']],
    ['overlap', 'overlap-edge', 'overlap-edge', { distance: 'overlap + 9 mm' }, ['Too much', 'Too little']],
    ['roll-line', 'break-point', 'break-point', { one: 'centre-front' }, ['', 'Beyond the edge']],
    [
      'break-point',
      'break-level',
      'break-level',
      { distance: 'break-rise + 9 mm' },
      ['A little higher', 'A little lower'],
    ],
    ['roll-line', 'stand-point', 'stand-point', { distance: 'stand - 9 mm' }, ['Too short', 'Too far']],
    ['roll-line', 'stand-point', 'stand-point', { distance: 'stand + 9 mm' }, ['Too far', 'Too short']],
    ['collar-single', 'notch', 'notch-level', { distance: 'notch-drop + 9 mm' }, ['Too low', 'Above their level']],
    ['collar-single', 'notch', 'notch-level', { distance: 'notch-drop - 9 mm' }, ['Above their level', 'Too low']],
    ['collar-single', 'notch', 'notch-reach', { distance: 'notch-width + 9 mm' }, ['Too far', 'Too near']],
    ['collar-single', 'gorge-corner', 'gorge-corner', { distance: 'gorge-depth + 9 mm' }, ['Too deep', 'Too high']],
    ['collar-single', 'outer-edge', 'outer-back', { distance: 'stand + fall + 9 mm' }, ['Wider', 'Narrower']],
    ['collar-single', 'outer-edge', 'outer-back', { distance: 'stand + fall - 9 mm' }, ['Narrower', 'Wider']],
    ['collar-single', 'outer-edge', 'over-shoulder', { distance: 'stand + fall + 15 mm' }, ['Full there', 'Hollowed']],
    ['collar-single', 'outer-edge', 'over-shoulder', { distance: 'stand + fall - 15 mm' }, ['Hollowed', 'Full there']],
    ['collar-double', 'lapel-point', 'lapel-point', { distance: 'peak-rise + 9 mm' }, ['Too much', 'Too little']],
    ['overlap-double', 'button-line', 'button-line', { distance: 'button-to-edge - 9 mm' }, ['Narrower', 'wider']],
    ['centre-back', 'collar-back', 'collar-back', { distance: 'back-neck + 9 mm' }, ['Too far', 'Too near']],
    ['centre-back', 'collar-back', 'collar-back', { distance: 'back-neck - 9 mm' }, ['Too near', 'Too far']],
    ['swing', 'back-line', 'back-line', { by: 'edge-ease + 9 mm' }, ['Swung too far', 'Not swung enough']],
    ['swing', 'back-line', 'back-line', { by: 'edge-ease - 9 mm' }, ['Not swung enough', 'Swung too far']],
    ['stand-fall', 'crease-point', 'crease-point', { distance: 'stand + 9 mm' }, ['Too high', 'Too low']],
    ['notch-level', 'notch-level', 'notch-level', { distance: 'notch-drop + 9 mm' }, ['Far below', 'Above, it crowds']],
  ])(
    '%s: %s, with its %s changed (%j), is told one of %j and not the other',
    (id, target, step, change, [told, untold]) => {
      const said = saidOf(id, target, step, change);
      expect(said).toContain(told);
      expect(said).not.toContain(untold);
    },
  );

  const both = exercises.flatMap((exercise) =>
    exercise.checks
      .filter(({ why }) => why.includes('{way, select'))
      .map((check) => [exercise.id, check.target, check.measure, exercise, check] as const),
  );

  test.each(both)('%s: off either way, the %s has one effect by its %s', (_id, _target, _measure, exercise, check) => {
    const givens = tableFor(exercise, orderOn(exercise, figure));
    const own = standingOf(exercise, givens, referenceSheet(exercise, givens), check, 'workroom');
    const amount = 4 * own.tolerance;
    const unsure = say(written(check.why, { ...fillers(null, givens) }), reader);
    for (const sense of [1, -1] as const) {
      const way = isRange(own.bounds) ? beyondRange(own, amount) : { amount, sense };
      const answer = nudge(check, rightSubject(exercise, givens, check), {
        ...way,
        angle: 0.3 + (sense * Math.PI) / 2,
      });
      const judged = standingOf(
        exercise,
        givens,
        withAnswer(exercise, givens, check.target, answer),
        check,
        'workroom',
      );
      const values = fillers(judged, givens);
      // A place may be off a way of which its text knows nothing.
      if (judged.status === 'within' || /left|right|up|down/.test(String(values['way']))) continue;
      expect(say(written(check.why, values), reader), String(values['way'])).not.toBe(unsure);
    }
  });
});

function never(): never {
  throw new Error('not there');
}
