import { describe, expect, test } from 'vitest';
import { loadExercise } from '../../src/cli/exercises.ts';
import type { Step } from '../../src/drafting/step.ts';
import { houseRules } from '../../src/garment/house-rules.ts';
import { people } from '../../src/garment/people.ts';
import { rulesInForce } from '../../src/garment/rules-in-force.ts';
import type { Exercise } from '../../src/grader/exercise.ts';
import { gradeDraft } from '../../src/grader/grade.ts';
import { layOut } from '../../src/grader/lay-out.ts';
import { say } from '../../src/words/say.ts';
import { appliedSteps } from './applied-steps.ts';
import { faultsAfter } from './authored.ts';
import { exercises, orderOn } from './tables.ts';

const [regular] = people;
if (regular === undefined) throw new Error('no people');
const { figure } = regular;
const inInches = { language: 'en', unit: 'in' } as const;

const where = exercises.filter(({ applies }) => applies !== undefined);

function learnersMeasures(exercise: Exercise): readonly string[] {
  const laid = layOut(exercise, orderOn(exercise, figure));
  return laid.ok ? [...laid.learner.measures.keys()] : [];
}

test('the exercises that teach a rule leave it to the learner; where it is a step on the way, it is given', () => {
  expect(Object.fromEntries(where.map(({ id, applies }) => [id, applies]))).toEqual({
    'overlap-button': ['overlap-rule'],
    'stand-fall': ['cover-rule'],
    'stand-point': ['stand-rule'],
  });
  for (const id of ['roll-line', 'collar-single', 'shawl']) {
    expect(learnersMeasures(loadExercise(id))).toContain('stand-by-rule');
  }
});

test('no learner has the measure of a rule that the exercise does not name', () => {
  for (const exercise of exercises) {
    const strange = houseRules.filter(({ name }) => !(name in exercise.house)).map(({ makes }) => makes);
    expect(learnersMeasures(exercise).filter((name) => strange.includes(name))).toEqual([]);
  }
});

describe.each(where.map((exercise) => [exercise.id, exercise] as const))('in %s', (_, exercise) => {
  const rules = houseRules.filter(({ name }) => exercise.applies?.includes(name));
  const houses = rules.flatMap(({ name, choices }) => choices.map((choice) => ({ [name]: choice.name })));

  test('the rule applied earns full marks and holds, by every choice', () => {
    for (const house of houses) {
      const order = orderOn(exercise, figure, house);
      const grade = gradeDraft(exercise, order, appliedSteps(exercise.reference, exercise, order), 'workroom');
      expect([house, grade.marks, grade.problems]).toEqual([house, grade.of, []]);
      expect(grade.otherFigures.held).toBe(grade.otherFigures.tried);
    }
  });

  test('the measure by the rule is not among the learner’s, and its name makes nothing', () => {
    for (const { makes } of rules) expect(learnersMeasures(exercise)).not.toContain(makes);
    const grade = gradeDraft(exercise, orderOn(exercise, figure), exercise.reference, 'workroom');
    expect(grade.marks).toBeLessThan(grade.of);
    expect(grade.problems.map((problem) => say(problem, inInches)).join()).toContain(`“${rules[0]?.makes}”`);
  });
});

test.each([
  ['overlap-button', { 'overlap-rule': 'twice-the-button' }, '38.1 mm', 'button * 2'],
  ['overlap-button', { 'overlap-rule': 'button-half-plus-quarter-inch' }, '15.875 mm', 'button / 2 + 1/4 in'],
  ['overlap-button', { 'overlap-rule': 'given' }, '31.75 mm', 'overlap'],
  ['stand-point', { 'stand-rule': 'full' }, '31.75 mm', 'stand'],
  ['stand-point', { 'stand-rule': 'quarter-inch-less' }, '25.4 mm', 'stand - 1/4 in'],
  ['stand-fall', { 'cover-rule': 'eighth-inch-and-turn' }, '41.275 mm', 'stand + (1/8 in + cloth-turn)'],
  ['stand-fall', { 'cover-rule': 'half-inch' }, '44.45 mm', 'stand + 1/2 in'],
])('in %s by %j, %s typed for what the rule gives lets go, and %s is named', (id, house, typed, instead) => {
  const exercise = loadExercise(id);
  const order = orderOn(exercise, figure, house);
  const steps = exercise.reference.map((step): Step => {
    if ('distance' in step && step.distance?.includes('by-rule')) return { ...step, distance: typed } as Step;
    return 'length' in step && step.length.includes('by-rule') ? { ...step, length: typed } : step;
  });
  const [first] = gradeDraft(exercise, order, steps, 'workroom').otherFigures.letGo;
  expect(say(first?.message ?? { text: '', values: {} }, inInches)).toContain(`equal ${instead}:`);
});

test('a rule that is not in force cannot be left to the learner', () => {
  expect(
    faultsAfter('overlap', (exercise) => Object.assign(exercise, { applies: ['stand-rule'] })),
  ).toMatchInlineSnapshot(
    `"applies[0]: No house rule under “house” is called “stand-rule”, and there is none here that could be meant."`,
  );
  expect(
    faultsAfter('stand-point', (exercise) => Object.assign(exercise, { applies: ['stand-role'] })),
  ).toMatchInlineSnapshot(
    `"applies[0]: No house rule under “house” is called “stand-role”. Did you mean “stand-rule”?"`,
  );
});

test('what the learner reads beforehand cannot tell what the rule gives', () => {
  expect(
    faultsAfter('stand-point', (exercise) => {
      exercise.brief = 'Mark it {stand-by-rule} past the neck point.';
    }),
  ).toMatchInlineSnapshot(
    `"brief: This text uses “stand-by-rule” in braces, and there is no such value. There are: stand, fall, neck-base, shoulder, shoulder-slope, front-waist, back-waist."`,
  );
});

test('every choice of every rule is told in a sentence', () => {
  const told = houseRules.flatMap(({ name, choices }) =>
    choices.flatMap((choice) => rulesInForce({ [name]: choice.name }).map((rule) => say(rule, inInches))),
  );
  expect(told).toMatchInlineSnapshot(`
    [
      "By the house rule on the order, the overlap is half the button’s diameter and 1/4 in more.",
      "By the house rule on the order, the overlap is twice the button’s diameter.",
      "By the house rule on the order, the overlap is the one that the order states, whatever the button.",
      "By the house rule on the order, the stand point lies the full stand past the neck point.",
      "By the house rule on the order, the stand point lies past the neck point by the stand less 1/4 in.",
      "By the house rule on the order, the fall exceeds the stand by 1/8 in and the turn of the cloth.",
      "By the house rule on the order, the fall exceeds the stand by 1/2 in.",
      "By the house rule on the order, the fall exceeds the stand by 5/8 in.",
      "By the house rule on the order, the collar is swung by the edge ease, measured, at its own width: the cloth is not stretched.",
      "By the house rule on the order, the collar is swung by the fall less the stand, at the length of the back neck: the edge is worked with the iron.",
    ]
  `);
  expect(rulesInForce({ 'stand-rule': 'nobody’s', 'no-rule': 'full' })).toEqual([]);
});
