import { expect, test } from 'vitest';
import { loadExercise } from '../../src/cli/exercises.ts';
import { renameObject } from '../../src/drafting/rename.ts';
import { replay } from '../../src/drafting/replay.ts';
import type { Pins } from '../../src/drafting/sheet.ts';
import type { Step } from '../../src/drafting/step.ts';
import { sampleFigure } from '../../src/garment/sample.ts';
import type { Exercise } from '../../src/grader/exercise.ts';
import { layOut } from '../../src/grader/lay-out.ts';
import { lostTargets } from '../../src/grader/lost.ts';
import { misread } from '../../src/grader/misreading.ts';
import { otherOrders } from '../../src/grader/other-orders.ts';
import { draftPlan } from '../../src/grader/plan/draft-plan.ts';
import { plannedReplay } from '../../src/grader/plan/planned-replay.ts';
import { lostByPlan } from '../../src/grader/plan/planned-trial.ts';
import { referenceHolding } from '../../src/grader/plan/reference-ground.ts';
import { orderOn } from './tables.ts';

const further = (steps: readonly Step[], at: number, by: string): readonly Step[] =>
  steps.map((step, index) =>
    index === at && 'distance' in step ? ({ ...step, distance: `${step.distance} + ${by}` } as Step) : step,
  );

/** A line ruled through two marks, drawn as a seam between them. */
const seamed = (steps: readonly Step[]): readonly Step[] =>
  steps.map((step): Step => {
    if (step.verb !== 'rule') return step;
    const seam = { verb: 'seam' as const, name: step.name, run: [step.from, step.to] };
    return step.answers === undefined ? seam : { ...seam, answers: step.answers };
  });

function draftsOf({ reference, misreadings }: Exercise): readonly (readonly Step[])[] {
  const wrong = misreadings.map((misreading) => misread(reference, misreading));
  const laid = reference.flatMap((step, at) => ('distance' in step ? [at] : []));
  return [
    reference,
    ...wrong,
    seamed(reference),
    ...laid.flatMap((at) => [further(reference, at, '0.01 mm'), further(reference, at, '30 mm')]),
    reference.toSpliced(3, 1),
  ];
}

test.each(['roll-line', 'shawl'])(
  'of %s, a planned draft loses on other figures the targets that it loses when it is replayed there',
  (id) => {
    const exercise = loadExercise(id);
    const order = orderOn(exercise, sampleFigure('planned', 'anyone'));
    const all = new Set(exercise.targets.map(({ name }) => name));
    let lost = 0;
    for (const other of otherOrders(exercise, order).slice(0, 2)) {
      const laid = layOut(exercise, other);
      if (!laid.ok) throw new Error('the order cannot be laid');
      const ruler = { exercise, givens: laid.givens, strictness: 'workroom' as const };
      for (const steps of draftsOf(exercise)) {
        const plan = draftPlan(exercise, steps, laid);
        const found = plan && lostByPlan(ruler, plan, all);
        if (found === null) throw new Error('the draft cannot be tried from its plan');
        expect(found).toEqual(lostTargets(ruler, replay(laid.learner, steps), all));
        lost += found.length;
      }
    }
    expect(lost).toBeGreaterThan(0);
  },
);

test.each(['roll-line', 'shawl'])(
  'of %s, a draft drawn from its plan comes out as it is replayed, and costs as much',
  (id) => {
    const exercise = loadExercise(id);
    let planned = 0;
    for (const [at, steps] of draftsOf(exercise).entries()) {
      const laid = layOut(exercise, orderOn(exercise, sampleFigure(`own/${at}`, 'anyone')));
      if (!laid.ok) throw new Error('the order cannot be laid');
      const drawn = plannedReplay(exercise, laid, steps);
      const replayed = replay(laid.learner, steps);
      if (drawn === null) expect(replayed.problems).not.toEqual([]);
      else expect(drawn).toEqual(replayed);
      planned += drawn === null ? 0 : 1;
    }
    expect(planned).toBeGreaterThan(exercise.misreadings.length);
  },
);

test('a table on which something was drawn already is left to what is remembered of it', () => {
  const exercise = loadExercise('roll-line');
  const laid = layOut(exercise, orderOn(exercise, sampleFigure('twice', 'anyone')));
  if (!laid.ok) throw new Error('the order cannot be laid');
  expect(plannedReplay(exercise, laid, exercise.reference)).not.toBeNull();
  expect(plannedReplay(exercise, laid, exercise.reference)).toBeNull();
});

test('the reference with answers held is drawn as it is replayed with them pinned', () => {
  const exercise = loadExercise('roll-line');
  const laid = layOut(exercise, orderOn(exercise, sampleFigure('held', 'anyone')));
  if (!laid.ok) throw new Error('the order cannot be laid');
  for (const [x, y] of [
    [-20, 80],
    [14, 300],
  ] as const) {
    const pins: Pins = new Map([['break-point', { kind: 'point', point: { x, y } }]]);
    const [held, pinned] = [
      referenceHolding(exercise, laid.givens, pins),
      replay(laid.givens, exercise.reference, pins),
    ];
    expect(pinned.answers.size).toBeGreaterThan(0);
    for (const [name, shape] of pinned.shapes) expect(held.shapes.get(name)).toEqual(shape);
    for (const [target, name] of pinned.answers) expect(held.answers.get(target)).toBe(name);
  }
});

test('a draft that names a measure kept from the learner is not planned, for the marker’s table has it', () => {
  const exercise = loadExercise('stand-point');
  const laid = layOut(exercise, orderOn(exercise, sampleFigure('hidden', 'anyone')));
  if (!laid.ok) throw new Error('the order cannot be laid');
  const step: Step = { verb: 'tape', name: 'guess', length: 'stand-by-rule' };
  expect(draftPlan(exercise, exercise.reference, laid)).toBeNull();
  expect(draftPlan(exercise, [{ ...step, length: 'stand' }], laid)).not.toBeNull();
  expect(draftPlan(exercise, [step], laid)).toBeNull();
});

test('drafts that do the same have one plan, from the second on, and none where they call something as a thing on the table is called', () => {
  const exercise = loadExercise('roll-line');
  const laid = layOut(exercise, orderOn(exercise, sampleFigure('named', 'anyone')));
  if (!laid.ok) throw new Error('the order cannot be laid');
  const { reference } = exercise;
  const named = (by: string) =>
    reference.reduce((all, { name }, at) => renameObject(all, name, at === 0 ? by : `${by}-${at}`), reference);
  expect(draftPlan(exercise, reference, laid)).not.toBeNull();
  const plan = draftPlan(exercise, named('ours'), laid);
  expect(plan).not.toBeNull();
  expect(draftPlan(exercise, named('mine'), laid)).toBe(plan);
  expect(draftPlan(exercise, named('yours'), laid)).toBe(plan);
  expect(draftPlan(exercise, named('waist'), laid)).toBeNull();
  expect(draftPlan(exercise, named('stand'), laid)).toBeNull();
  expect(draftPlan(exercise, further(reference, 0, '1 mm'), laid)).not.toBe(plan);
});
