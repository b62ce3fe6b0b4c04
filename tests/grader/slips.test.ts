import { describe, expect, test } from 'vitest';
import { loadExercise } from '../../src/cli/exercises.ts';
import type { Step } from '../../src/drafting/step.ts';
import { houseRules } from '../../src/garment/house-rules.ts';
import { people } from '../../src/garment/people.ts';
import type { Exercise } from '../../src/grader/exercise.ts';
import { gradeDraft } from '../../src/grader/grade.ts';
import { misread } from '../../src/grader/misreading.ts';
import type { Grade } from '../../src/grader/result.ts';
import { say } from '../../src/words/say.ts';
import { appliedSteps } from './applied-steps.ts';
import { exercises, orderOn } from './tables.ts';

const figures = people.slice(0, 3).map(({ figure }) => figure);

/** What is named at a target on the first invented people, each name once. */
function named(exercise: Exercise, steps: readonly Step[], target: string): readonly (string | null)[] {
  const names = figures.flatMap((figure) => {
    const order = orderOn(exercise, figure);
    return gradeDraft(exercise, order, appliedSteps(steps, exercise, order), 'workroom')
      .checks.filter((check) => check.target === target && check.status !== 'within')
      .map(({ misreading }) => misreading);
  });
  return [...new Set(names)];
}

function said(grade: Grade, target: string): string {
  const sentences = grade.reports.find((report) => report.target === target)?.sentences ?? [];
  return sentences.map((sentence) => say(sentence, { language: 'en', unit: 'in' })).join('\n');
}

/** The classic wrong ways, in the words of the trade, each with an exercise that knows it and by which name. */
const classics: readonly (readonly [way: string, exercise: string, id: string])[] = [
  ['stand point at the neck point itself', 'stand-point', 'no-stand'],
  ['stand point at the neck point itself', 'roll-line', 'no-stand'],
  ['stand point at the neck point itself', 'roll-line-pair', 'no-stand'],
  ['roll line through the neck point', 'roll-line', 'through-neck-point'],
  ['break point on the centre front', 'break-point', 'on-centre-front'],
  ['overlap halved, half of it to each side', 'overlap', 'halved'],
  ['inches read as centimetres', 'overlap', 'inches-as-centimetres'],
  ['lapel drawn but not folded', 'lapel-folded', 'not-folded'],
  ['folded over the centre front', 'lapel-folded', 'over-centre-front'],
  ['notch above the collarbone level', 'notch-gorge', 'above-collarbone'],
  ['level measured on the flat', 'notch-gorge', 'on-the-flat'],
  ['collar not swung', 'swing', 'not-swung'],
  ['swung the wrong way', 'swing', 'wrong-way'],
  ['swing by the ease at the neck edge', 'swing', 'at-the-neck-edge'],
  ['front neck taken for back neck', 'back-neck', 'front-for-back'],
  ['whole for half', 'back-neck', 'whole-for-half'],
  ['stand and fall exchanged', 'stand-fall', 'stand-and-fall-exchanged'],
  ['fall no longer than the stand', 'stand-fall', 'no-longer-than-stand'],
  ['centre back left unsquare', 'centre-back', 'left-unsquare'],
  ['dip filled in', 'neck-edge', 'dip-filled'],
  ['neck edge measured along the chord', 'neck-edge', 'along-the-chord'],
  ['walked from the wrong match mark', 'neck-edge', 'wrong-match-mark'],
];

test.each(classics)('%s: %s knows it as %s', (_, name, id) => {
  const exercise = loadExercise(name);
  const misreading = exercise.misreadings.find((one) => one.id === id) ?? never();
  expect(named(exercise, misread(exercise.reference, misreading), misreading.target)).toEqual([id]);
});

describe('another house’s rule', () => {
  /** A draft made by another choice of a rule. */
  const madeBy = (exercise: Exercise, rule: string, choice: string): readonly Step[] => {
    const { makes, choices } = houseRules.find(({ name }) => name === rule) ?? never();
    const gives = choices.find(({ name }) => name === choice)?.gives ?? never();
    return JSON.parse(JSON.stringify(exercise.reference).replaceAll(makes, `(${gives})`));
  };

  test.each([
    ['stand-point', 'stand-rule', 'quarter-inch-less', 'stand-point', 'by-quarter-inch-less'],
    ['roll-line', 'stand-rule', 'quarter-inch-less', 'stand-point', 'by-quarter-inch-less'],
    ['collar-single', 'stand-rule', 'quarter-inch-less', 'roll-line', 'by-quarter-inch-less'],
    ['collar-single', 'swing-rule', 'fall-less-stand', 'collar-centre-back', 'by-fall-less-stand'],
    ['stand-fall', 'cover-rule', 'half-inch', 'collar-fall', 'by-half-inch'],
    ['overlap-button', 'overlap-rule', 'given', 'overlap-edge', 'by-given'],
    // What the exercise itself has words for is said in those.
    ['overlap-button', 'overlap-rule', 'button-half-plus-quarter-inch', 'overlap-edge', 'least-lap'],
  ])('followed in %s is named, with the one on the order: %s, %s', (name, rule, choice, target, id) => {
    const exercise = loadExercise(name);
    expect(named(exercise, madeBy(exercise, rule, choice), target)).toEqual([id]);
  });

  test('is not read into a mark made by eye between the two', () => {
    const exercise = loadExercise('stand-point');
    const short = (by: string): readonly Step[] =>
      exercise.reference.map((step) => ({ ...step, distance: `stand - ${by}` }) as Step);
    expect(named(exercise, short('6 mm'), 'stand-point')).toEqual(['by-quarter-inch-less']);
    for (const by of ['4 mm', '9 mm']) expect(named(exercise, short(by), 'stand-point')).toEqual([null]);
  });

  test('is set beside the one on the order', () => {
    const exercise = loadExercise('overlap-button');
    const steps = madeBy(exercise, 'overlap-rule', 'given');
    expect(
      said(gradeDraft(exercise, orderOn(exercise, figures[0] ?? never()), steps, 'workroom'), 'overlap-edge'),
    ).toMatchInlineSnapshot(`
      "Your overlap edge is where another house has it: there, the overlap is the one that the order states, whatever the button. By the house rule on this order, the overlap is twice the button’s diameter.
      As drafting that is no fault. But a house keeps to one rule, so that whatever is cut there goes together.
      Work the overlap out from the button by the house rule: on this order it comes to 1 1/2 in. Draw the edge parallel to the centre front at that distance, to the left."
    `);
  });
});

describe('two targets exchanged', () => {
  const swap = (steps: readonly Step[], one: string, other: string): readonly Step[] =>
    steps.map((step) => {
      if (step.answers === one) return { ...step, answers: other };
      return step.answers === other ? { ...step, answers: one } : step;
    });

  const pairs = exercises.flatMap((exercise) =>
    exercise.targets.flatMap((one, index) =>
      exercise.targets
        .slice(index + 1)
        .filter(({ makes }) => makes === one.makes)
        .map((other) => [exercise.id, one.name, other.name, exercise] as const),
    ),
  );

  test.each(pairs)('in %s, %s and %s, are known as exchanged', (_, one, other, exercise) => {
    const steps = swap(exercise.reference, one, other);
    expect(named(exercise, steps, one)).toEqual([`taken-for-${other}`]);
    // Where the second target follows from the first as the first from the second, it is right from where the learner stood.
    expect([[`taken-for-${one}`], []]).toContainEqual(named(exercise, steps, other));
  });

  test('are told that nothing need be drawn again', () => {
    const pair = loadExercise('roll-line-pair');
    const steps = swap(pair.reference, 'roll-line', 'roll-line-high');
    const grade = gradeDraft(pair, orderOn(pair, figures[0] ?? never()), steps, 'workroom');
    expect(said(grade, 'roll-line')).toMatchInlineSnapshot(`
      "You have exchanged the roll line and the high roll line: what you point out as the one is the other. Nothing need be drawn again; point each out as what it is.
      (Your overlap edge, break point and stand point are right, and this was judged from them.)"
    `);
  });

  test('are told from one pointed out for the other', () => {
    const roll = loadExercise('roll-line');
    const steps = roll.reference.map((step) =>
      step.name === 'break-point' ? ({ ...step, answers: 'stand-point' } as Step) : { ...step, answers: undefined },
    );
    const kept = steps.map(({ answers, ...step }) => (answers === undefined ? step : { ...step, answers }) as Step);
    const grade = gradeDraft(roll, orderOn(roll, figures[0] ?? never()), kept, 'workroom');
    expect(said(grade, 'stand-point')).toMatchInlineSnapshot(`
      "What you point out as the stand point is the break point.
      The room between this mark and the neck point is what the stand of the collar is made of. Too short, and the collar lies flat at the shoulder and shows the neck seam; too far, and it stands away from the neck.
      Mark along the shoulder line from the neck point, 1 1/4 in to the left."
    `);
  });
});

function never(): never {
  throw new Error('not there');
}
