import { describe, expect, test } from 'vitest';
import { loadExercise } from '../../src/cli/exercises.ts';
import { workRow } from '../../src/exchange/grade-row.ts';
import type { HandIn } from '../../src/exchange/hand-in.ts';
import { type Marking, markWork } from '../../src/exchange/mark-work.ts';
import { remarksOn } from '../../src/exchange/remarks.ts';
import type { ProblemSet } from '../../src/exchange/set.ts';
import { setOrder } from '../../src/exchange/set-order.ts';
import { studentKey } from '../../src/exchange/student.ts';
import { writeHandIn } from '../../src/exchange/write-hand-in.ts';
import { setMark } from '../../src/exchange/write-set.ts';
import { say } from '../../src/words/say.ts';
import { rightOverlap } from './hand-ins.ts';
import { weekTwo } from './sets.ts';

const overlap = loadExercise('overlap');
const set: ProblemSet = { ...weekTwo, exercises: [{ exercise: 'overlap', marks: 30 }], checks: 2, hints: true };
const alone: Marking = { load: loadExercise, set: null, strictness: null };

/** The right overlap, drawn as the set deals it. */
const dealt: HandIn = {
  ...rightOverlap,
  set: setMark(set),
  order: setOrder(set, overlap, rightOverlap),
  hints: {},
  saved: '2026-03-01T09:00:00.000Z',
};

const rowIn = (handIn: HandIn, by: ProblemSet | null) => {
  const marked = markWork(writeHandIn(handIn), { ...alone, set: by });
  if (!marked.ok) throw new Error(say(marked.message, { language: 'en', unit: 'cm' }));
  return workRow('a.json', marked, by);
};

describe('work marked in a set', () => {
  test('counts what the set says it is worth, and keeps its own marks beside that', () => {
    const row = rowIn(dealt, set);
    expect(row).toMatchObject({ marks: row.of, strictness: 'workroom' });
    expect(row.inSet).toEqual({ id: setMark(set).id, marks: 30, of: 30, remarks: [], figureOf: studentKey(dealt) });
  });

  test('is marked by the set’s strictness, whatever it says itself', () => {
    expect(rowIn({ ...dealt, strictness: 'learner' }, { ...set, strictness: 'sample-room' }).strictness).toBe(
      'sample-room',
    );
    expect(rowIn({ ...dealt, strictness: 'learner' }, null)).toMatchObject({ strictness: 'learner', inSet: null });
  });

  test('of an exercise that is not in the set is worth nothing there, and is told', () => {
    const { inSet } = rowIn(dealt, { ...set, exercises: [{ exercise: 'swing', marks: 5 }] });
    expect(inSet).toMatchObject({ marks: 0, of: 0, remarks: ['other-set', 'not-in-set'] });
  });
});

describe('what is told of work in a set', () => {
  test.each<[readonly string[], Partial<HandIn>, Partial<ProblemSet>]>([
    [[], {}, {}],
    [['other-set'], { set: null }, {}],
    [['other-set'], { set: { title: set.title, id: '00000000' } }, {}],
    [['other-figure'], { order: { ...dealt.order, figure: { named: 'amara' } } }, {}],
    [['other-figure'], { student: 'Tam Okoro', number: '' }, {}],
    [['other-order'], { order: { ...dealt.order, style: { overlap: '2 in' } } }, {}],
    [[], { order: { ...dealt.order, style: { overlap: overlap.style['overlap']?.value ?? '' } } }, {}],
    [['late'], { saved: '2026-03-06T17:00:00.001Z' }, {}],
    [[], { saved: '2026-03-06T17:00:00.000Z' }, {}],
    [[], { saved: null }, {}],
    [['checks-over'], { checks: 3 }, {}],
    [['hints-taken'], { hints: { 'overlap-edge': 1 } }, { hints: false }],
    [['places-shown'], { shown: ['overlap-edge'] }, {}],
    [[], { shown: ['overlap-edge'] }, { feedback: 'place' }],
  ])('%j after %j, in a set with %j', (remarks, change, changedSet) => {
    const asked = { ...set, ...changedSet };
    const handIn = { ...dealt, set: setMark(asked), ...change };
    expect(remarksOn(handIn, overlap, asked)).toEqual(remarks);
  });

  test('is of a house rule what it comes to: one that is said nowhere is as the exercise has it', () => {
    const roll = loadExercise('roll-line');
    const others = (own: HandIn['order']['house'], house: ProblemSet['house']): boolean => {
      const asked = { ...set, exercises: [{ exercise: roll.id, marks: 10 }], house };
      const order = { ...setOrder(asked, roll, rightOverlap), house: own };
      return remarksOn({ ...dealt, exercise: roll.id, order, set: setMark(asked) }, roll, asked).includes(
        'other-order',
      );
    };
    expect(roll.house).toEqual({ 'stand-rule': 'full' });
    expect([others({}, {}), others({ 'stand-rule': 'full' }, {}), others({}, { 'stand-rule': 'full' })]).toEqual([
      false,
      false,
      false,
    ]);
    expect([others({}, { 'stand-rule': 'quarter-inch-less' }), others({ 'stand-rule': 'none' }, {})]).toEqual([
      true,
      true,
    ]);
  });

  test('is to whom the set dealt the figure, whoever hands it in, and of any other figure nobody', () => {
    const of = (change: Partial<HandIn>, by = set): unknown => rowIn({ ...dealt, ...change }, by).inSet?.figureOf;
    const figured = (figure: HandIn['order']['figure']) => ({ order: { ...dealt.order, figure } });
    expect(of({ student: 'Tam Okoro', number: '' })).toBe(studentKey(rightOverlap));
    expect(of(figured({ named: 'amara' }))).toBeNull();
    expect(of(figured({ sampled: 'men', seed: `${set.seed}/tam` }))).toBeNull();
    expect(of(figured({ sampled: 'women', seed: 'tam' }))).toBeNull();
    expect(of({}, { ...set, figures: 'stated' })).toBeNull();
  });

  test('is the order where a house rule of the set was not kept', () => {
    const button = loadExercise('overlap-button');
    const asked = { ...set, exercises: [{ exercise: 'overlap-button', marks: 5 }] };
    const order = setOrder(asked, button, dealt);
    const handIn = { ...dealt, exercise: 'overlap-button', set: setMark(asked), order };
    expect(remarksOn(handIn, button, asked)).toEqual([]);
    const other = { ...order, house: { 'overlap-rule': 'given' } };
    expect(remarksOn({ ...handIn, order: other }, button, asked)).toEqual(['other-order']);
  });
});

test('a piece of work that the grader itself stumbles over is refused in words', () => {
  const stumble = () => {
    throw new RangeError('out of range');
  };
  const marked = markWork(writeHandIn(dealt), { ...alone, load: stumble });
  expect(marked.ok ? '' : say(marked.message, { language: 'en', unit: 'cm' })).toBe(
    'This could not be marked: the grader itself stumbled over it (out of range). Please report it, with the file.',
  );
});
