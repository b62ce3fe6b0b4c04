import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { exerciseNames, loadExercise } from '../../../../src/cli/exercises.ts';
import type { Step } from '../../../../src/drafting/step.ts';
import { alikeDrafts, numbersAskedFor } from '../../../../src/exchange/class/alike/alike-drafts.ts';
import { LEAST_NUMBERS } from '../../../../src/exchange/class/alike/free-hand.ts';
import { sampleFigure } from '../../../../src/garment/sample.ts';
import { orderFor } from '../../../../src/grader/order-for.ts';
import { appliedSteps } from '../../../grader/applied-steps.ts';
import { draftOf } from './drafts.ts';

const roll = loadExercise('roll-line');

/** Steps by eye and by number, as somebody would draw them for one figure: three marks, and a length. */
const byHand: readonly Step[] = [
  { verb: 'pencil', name: 'low', at: [-24.7, 37.3], answers: 'break-point' },
  { verb: 'pencil', name: 'high', at: [41.2, 391.6], answers: 'stand-point' },
  { verb: 'rule', name: 'roll', from: 'low', to: 'high', answers: 'roll-line' },
  { verb: 'pencil', name: 'corner', at: [-26.1, 212.4] },
  { verb: 'parallel', name: 'edge', to: 'centre-front', distance: '27.5 mm', side: 'left', answers: 'overlap-edge' },
];

const ana = draftOf(roll, 'Ana', 'a', byHand);
const bo = draftOf(roll, 'Bo', 'b', byHand);

describe('drafts that are alike', () => {
  test('are asked about: the same free marks and typed numbers on two figures', () => {
    expect(alikeDrafts([bo, ana])).toEqual([
      {
        exercise: 'roll-line',
        students: [
          { key: 'ana', who: { student: 'Ana', number: '' } },
          { key: 'bo', who: { student: 'Bo', number: '' } },
        ],
        numbers: 7,
      },
    ]);
  });

  test('are one question, however many they are, with whatever names and in whatever order the steps stand', () => {
    const renamed = byHand
      .map((step) => JSON.parse(JSON.stringify(step).replaceAll('"low"', '"p-1"')) as Step)
      .toSorted((a, b) => Number(a.verb === 'rule') - Number(b.verb === 'rule'));
    const inInches = byHand.map((step) => (step.name === 'edge' ? ({ ...step, distance: '2.75 cm' } as Step) : step));
    const [question, ...more] = alikeDrafts([
      ana,
      bo,
      draftOf(roll, 'Cem', 'c', renamed),
      draftOf(roll, 'Dai', 'd', inInches),
    ]);
    expect(more).toEqual([]);
    expect(question?.students.map(({ key }) => key)).toEqual(['ana', 'bo', 'cem', 'dai']);
  });

  test('are not asked about on one and the same figure', () => {
    expect(alikeDrafts([ana, draftOf(roll, 'Bo', 'a', byHand)])).toEqual([]);
  });

  test('are not asked about where one number differs', () => {
    const other = byHand.map((step) =>
      step.verb === 'pencil' ? { ...step, at: [step.at[0], step.at[1] + 0.1] } : step,
    );
    expect(alikeDrafts([ana, draftOf(roll, 'Bo', 'b', other as readonly Step[])])).toEqual([]);
  });

  test('are not asked about where a curve was pulled another way, before its mark or after it', () => {
    const pulled = (before: number, after: number): readonly Step[] => [
      ...byHand,
      {
        verb: 'curve',
        name: 'c',
        through: ['low', 'corner', 'high'],
        shape: [null, { turn: 0.1, before, after }, null],
      },
    ];
    const question = (steps: readonly Step[]) =>
      alikeDrafts([draftOf(roll, 'Ana', 'a', pulled(0.3, 0.4)), draftOf(roll, 'Bo', 'b', steps)]);
    expect(question(pulled(0.3, 0.4))).toHaveLength(1);
    expect(question(pulled(0.35, 0.4))).toEqual([]);
    expect(question(pulled(0.3, 0.45))).toEqual([]);
  });

  test.each(exerciseNames())('are not asked about where they follow the reference of %s', (name) => {
    const exercise = loadExercise(name);
    const work = ['a', 'b', 'c'].map((seed) => {
      const order = { ...orderFor(exercise, seed), figure: sampleFigure(seed, 'women') };
      return draftOf(exercise, seed, seed, appliedSteps(exercise.reference, exercise, order));
    });
    expect(alikeDrafts(work)).toEqual([]);
  });

  test('are not asked about for what the order states, typed as numbers, in either unit', () => {
    const typed: readonly Step[] = [
      { verb: 'parallel', name: 'edge', to: 'centre-front', distance: '1 in', side: 'left' },
      { verb: 'parallel', name: 'level', to: 'waist', distance: '1.5 cm', side: 'up' },
      { verb: 'cross', name: 'low', one: 'edge', other: 'level' },
      { verb: 'along', name: 'high', on: 'shoulder-line', from: 'neck-point', distance: '3.2 cm', toward: 'left' },
      { verb: 'along', name: 'less', on: 'shoulder-line', from: 'neck-point', distance: '1 3/4 in', toward: 'left' },
      { verb: 'along', name: 'half', on: 'shoulder-line', from: 'neck-point', distance: '5/8 in', toward: 'left' },
      { verb: 'slant', name: 'lean', to: 'waist', angle: '45 deg', turn: 'clockwise', through: 'low' },
    ];
    expect(ana.freeHand?.free).toBe(7);
    expect(draftOf(roll, 'Ana', 'a', typed).freeHand?.free).toBe(0);
    expect(alikeDrafts([draftOf(roll, 'Ana', 'a', typed), draftOf(roll, 'Bo', 'b', typed)])).toEqual([]);
  });

  test('are not asked about for marks that were caught where lines cross, which is the same place on every figure', () => {
    const caught: readonly Step[] = [
      ...roll.reference.slice(0, 2),
      { verb: 'pencil', name: 'low', at: [-25.4, 38.1], answers: 'break-point' },
      { verb: 'parallel', name: 'beside', to: 'centre-front', distance: 'fall', side: 'left' },
      { verb: 'pencil', name: 'other', at: [-44.45, 38.1] },
    ];
    expect(draftOf(roll, 'Ana', 'a', caught).freeHand?.free).toBe(0);
  });

  test('of students who work apart are not asked about, whether they measure, type or draw by eye', () => {
    const wobble = fc.double({ min: -4, max: 4, noNaN: true });
    const draft = fc.record({ wobbles: fc.tuple(wobble, wobble, wobble, wobble), rounds: fc.constantFrom(1, 0.5, 5) });
    fc.assert(
      fc.property(fc.array(draft, { minLength: 2, maxLength: 12 }), (drafts) => {
        const work = drafts.map(({ wobbles: [a, b, c, d], rounds }, seat) => {
          const figure = sampleFigure(`seat ${seat}`, 'women');
          const measured = (mm: number): string => `${Math.round(mm / rounds) * rounds} mm`;
          const steps: readonly Step[] = [
            { verb: 'pencil', name: 'low', at: [-25.4 + a, 38.1 + b], answers: 'break-point' },
            { verb: 'pencil', name: 'high', at: [figure['neck-base'] / 6 + c, figure['front-waist'] + d] },
            { verb: 'parallel', name: 'edge', to: 'centre-front', distance: '1 in', side: 'left' },
            { verb: 'parallel', name: 'level', to: 'waist', distance: measured(figure['front-waist']), side: 'up' },
            {
              verb: 'parallel',
              name: 'wide',
              to: 'centre-front',
              distance: measured(figure['shoulder']),
              side: 'right',
            },
          ];
          return draftOf(roll, `Student ${seat}`, `seat ${seat}`, steps);
        });
        expect(alikeDrafts(work)).toEqual([]);
      }),
      { numRuns: 60 },
    );
  });

  test('need more numbers in a larger class, so that chance alone hardly ever asks', () => {
    expect([1, 2, 10, 30, 1000].map(numbersAskedFor)).toEqual([Number.POSITIVE_INFINITY, LEAST_NUMBERS, 4, 5, 8]);
  });
});
