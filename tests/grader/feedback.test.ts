import { describe, expect, test } from 'vitest';
import { loadExercise } from '../../src/cli/exercises.ts';
import type { Step } from '../../src/drafting/step.ts';
import { people } from '../../src/garment/people.ts';
import { gradeDraft } from '../../src/grader/grade.ts';
import type { Grade } from '../../src/grader/result.ts';
import { say } from '../../src/words/say.ts';
import type { Unit } from '../../src/words/unit.ts';
import { orderOn } from './tables.ts';

const rollLine = loadExercise('roll-line');
const [regular] = people;
if (regular === undefined) throw new Error('no people');
const order = orderOn(rollLine, regular.figure);

function swapped(...instead: readonly Step[]): readonly Step[] {
  return rollLine.reference.map((step) => instead.find(({ name }) => name === step.name) ?? step);
}

function paragraph(grade: Grade, target: string, unit: Unit = 'cm'): string {
  const report = grade.reports.find((one) => one.target === target);
  return (report?.sentences ?? []).map((sentence) => say(sentence, { language: 'en', unit })).join('\n');
}

test('a right draft is told so, target by target, with its figure where it is known by one', () => {
  const grade = gradeDraft(rollLine, order, rollLine.reference, 'workroom');
  expect([grade.marks, grade.of]).toEqual([grade.of, grade.of]);
  expect(grade.reports.map(({ target }) => paragraph(grade, target))).toMatchInlineSnapshot(`
    [
      "Your overlap edge is right: 2.5 cm from the centre front.",
      "Your break point is right: 3.8 cm above the waist.",
      "Your stand point is right.",
      "Your roll line is right.",
    ]
  `);
});

test('nothing drawn is missing, and the first thing to do is said', () => {
  const grade = gradeDraft(rollLine, order, [], 'workroom');
  expect(grade.marks).toBe(0);
  expect(new Set(grade.checks.map(({ status }) => status))).toEqual(new Set(['missing']));
  expect(paragraph(grade, 'overlap-edge')).toMatchInlineSnapshot(`
    "Nothing on the sheet is pointed out as the overlap edge yet.
    Draw the edge parallel to the centre front, 2.5 cm to the left."
  `);
});

test('the wrong kind of thing is told from the right one', () => {
  const steps = swapped({
    verb: 'cross',
    name: 'overlap-edge',
    one: 'centre-front',
    other: 'waist',
    answers: 'overlap-edge',
  });
  const grade = gradeDraft(rollLine, order, steps, 'workroom');
  expect(paragraph(grade, 'overlap-edge')).toMatchInlineSnapshot(`
    "What you point out as the overlap edge is a point; a line is wanted.
    Draw the edge parallel to the centre front, 2.5 cm to the left."
  `);
});

test('a roll line through the neck point is known for what it is, in the reader’s unit', () => {
  const steps = swapped({
    verb: 'rule',
    name: 'roll-line',
    from: 'break-point',
    to: 'neck-point',
    answers: 'roll-line',
  });
  const grade = gradeDraft(rollLine, order, steps, 'workroom');
  expect(paragraph(grade, 'roll-line', 'in')).toMatchInlineSnapshot(`
    "Your roll line runs through the neck point, 1 1/4 in too far toward the shoulder tip. A collar drafted on it has no stand at the shoulder: it will lie flat there and the lapel will not roll. Extend the shoulder line past the neck point, by 1 1/4 in, and rule from your break point to that mark.
    (Your overlap edge, break point and stand point are right, and this was judged from them.)"
  `);
  expect(paragraph(grade, 'roll-line', 'cm')).toMatchInlineSnapshot(`
    "Your roll line runs through the neck point, 3.1 cm too far toward the shoulder tip. A collar drafted on it has no stand at the shoulder: it will lie flat there and the lapel will not roll. Extend the shoulder line past the neck point, by 3.2 cm, and rule from your break point to that mark.
    (Your overlap edge, break point and stand point are right, and this was judged from them.)"
  `);
});

test('an overlap a little wide is said with its size and its way, and what follows is judged from it', () => {
  const steps = swapped({
    verb: 'parallel',
    name: 'overlap-edge',
    to: 'centre-front',
    distance: 'overlap + 8 mm',
    side: 'left',
    answers: 'overlap-edge',
  });
  const grade = gradeDraft(rollLine, order, steps, 'workroom');
  expect(paragraph(grade, 'overlap-edge')).toMatchInlineSnapshot(`
    "Without the 8 mm added in step 1 your overlap edge would be right. If that is a seam allowance, leave it out: a draft is net, its lines are the ones that are sewn, and the allowance comes when the pattern is cut.
    Your overlap edge is 3.3 cm from the centre front, where 2.5 cm is wanted: 0.8 cm too far from it.
    The lapel hinges at the edge. Too wide a one leaves a loose strip of cloth beyond the buttons.
    Draw the edge parallel to the centre front, 2.5 cm to the left."
  `);
  expect(paragraph(grade, 'break-point')).toMatchInlineSnapshot(
    `"Your break point is right, as seen from your own overlap edge: that slip was marked there and not counted again."`,
  );
  const lost = grade.checks.filter(({ status }) => status !== 'within');
  expect(new Set(lost.map(({ target }) => target))).toEqual(new Set(['overlap-edge']));
  expect(grade.checks.filter(({ carried }) => carried).map(({ target }) => target)).toContain('break-point');
});

test('an order that cannot be laid earns nothing and says why', () => {
  const broken = { ...order, style: { ...order.style, overlap: '3 yards' } };
  const grade = gradeDraft(rollLine, broken, rollLine.reference, 'workroom');
  expect([grade.marks, grade.of]).toEqual([0, gradeDraft(rollLine, order, [], 'workroom').of]);
  expect(grade.problems.map((problem) => say(problem, { language: 'en', unit: 'cm' }))).toMatchInlineSnapshot(`
    [
      "The overlap, “overlap”, is “3 yards”. Between “3” and “yards” a sign is missing. Write +, -, * or / between them.",
    ]
  `);
});

test('a typed number that lets go elsewhere is named with the measure it stands for', () => {
  const steps = swapped({
    verb: 'along',
    name: 'stand-point',
    on: 'shoulder-line',
    from: 'neck-point',
    distance: '1 1/4 in',
    toward: 'left',
    answers: 'stand-point',
  });
  const grade = gradeDraft(rollLine, order, steps, 'workroom');
  expect(grade.marks).toBe(grade.of);
  expect(
    grade.otherFigures.letGo.map(({ message }) => say(message, { language: 'en', unit: 'cm' })),
  ).toMatchInlineSnapshot(`
    [
      "On other figures the stand point lets go at step 4: 1 1/4 in is a typed number, and stays the same on every order. Here it happens to equal stand by the house rule: write that, and the draft follows the order.",
    ]
  `);
});

test('figures of one sentence agree after rounding, and a check that is close says what it earns', () => {
  const steps = swapped({
    verb: 'parallel',
    name: 'overlap-edge',
    to: 'centre-front',
    distance: 'overlap + 4.9 mm',
    side: 'left',
    answers: 'overlap-edge',
  });
  const grade = gradeDraft(rollLine, order, steps, 'workroom');
  const said = paragraph(grade, 'overlap-edge');
  expect(said).toContain('is 3 cm from the centre front, where 2.5 cm is wanted: 0.5 cm too far from it.');
  expect(said).toContain('That is close, and earns 1 of 2 marks.');
});

test('an edge drawn square to the centre front runs across it', () => {
  const steps = swapped({
    verb: 'square',
    name: 'overlap-edge',
    to: 'centre-front',
    through: 'front-neck-point',
    answers: 'overlap-edge',
  });
  expect(paragraph(gradeDraft(rollLine, order, steps, 'workroom'), 'overlap-edge')).toContain(
    'Your overlap edge runs across the centre front, at right angles to it, and has no one distance from it.',
  );
});

test.each([
  ['as good as square', 'rule', 'at right angles to it'],
  ['at a wide angle', 'slant', 'at 70° to it'],
] as const)('an edge %s to the centre front runs across it, and no absurd distance is told', (_, verb, said) => {
  const across: readonly Step[] =
    verb === 'rule'
      ? [
          { verb: 'pencil', name: 'one', at: [-10, 10] },
          { verb: 'pencil', name: 'other', at: [90, 10.001] },
          { verb: 'rule', name: 'across', from: 'one', to: 'other', answers: 'overlap-edge' },
        ]
      : [
          {
            verb: 'slant',
            name: 'across',
            to: 'centre-front',
            angle: '70 deg',
            turn: 'clockwise',
            through: 'front-neck-point',
            answers: 'overlap-edge',
          },
        ];
  const told = paragraph(gradeDraft(rollLine, order, across, 'workroom'), 'overlap-edge');
  expect(told).toContain(`Your overlap edge runs across the centre front, ${said}, and has no one distance from it.`);
  expect(told).not.toMatch(/\d{3,} cm|leans/);
});

test('an edge that leans about its foot costs marks for its distance, even where a degree would pass', () => {
  const steps: readonly Step[] = [
    { verb: 'parallel', name: 'plumb', to: 'centre-front', distance: 'overlap', side: 'left' },
    { verb: 'cross', name: 'foot', one: 'plumb', other: 'waist' },
    {
      verb: 'slant',
      name: 'edge',
      to: 'plumb',
      angle: '0.9 deg',
      turn: 'anticlockwise',
      through: 'foot',
      answers: 'overlap-edge',
    },
  ];
  const grade = gradeDraft(rollLine, order, steps, 'workroom');
  const looks = grade.checks.filter(({ target }) => target === 'overlap-edge');
  expect(looks.map(({ check, status }) => [check, status])).toEqual([
    ['parallel', 'near'],
    ['squareness', 'within'],
  ]);
  expect(paragraph(grade, 'overlap-edge')).toContain(
    'is 3.1 cm from the centre front at the front neck point, where 2.5 cm is wanted: 0.6 cm too far from it.',
  );
});

test('a roll line drawn square to the right one runs across it', () => {
  const steps: readonly Step[] = [
    ...swapped({ verb: 'rule', name: 'roll-line', from: 'break-point', to: 'stand-point' }),
    { verb: 'square', name: 'across', to: 'roll-line', through: 'break-point', answers: 'roll-line' },
  ];
  expect(paragraph(gradeDraft(rollLine, order, steps, 'workroom'), 'roll-line')).toContain(
    'Your roll line runs across the right one, at right angles to it.',
  );
});

test('an edge on the wrong side of the centre front is told so', () => {
  const steps = swapped({
    verb: 'parallel',
    name: 'overlap-edge',
    to: 'centre-front',
    distance: 'overlap + 15 mm',
    side: 'right',
    answers: 'overlap-edge',
  });
  expect(paragraph(gradeDraft(rollLine, order, steps, 'workroom'), 'overlap-edge')).toContain(
    'Your overlap edge is 4 cm from the centre front, on the wrong side of it; 2.5 cm on the other side is wanted.',
  );
});

describe('a mark on a centre back', () => {
  const fall = loadExercise('stand-fall');
  const fallOrder = orderOn(fall, regular.figure);
  const creasedBy = (change: object): Grade =>
    gradeDraft(
      fall,
      fallOrder,
      fall.reference.map((step) => (step.name === 'crease-point' ? ({ ...step, ...change } as Step) : step)),
      'workroom',
    );

  test('that is only too near is not told to keep to the line it lies on, nor to go the way it went', () => {
    const said = paragraph(creasedBy({ distance: 'stand / 2' }), 'crease-point');
    expect(said).toContain('too near to it');
    expect(said).not.toContain('Keep to the centre back');
    expect(said).not.toContain('would lean');
  });

  test('that is the mark it is measured from is told so', () => {
    const said = paragraph(creasedBy({ distance: '0 mm' }), 'crease-point');
    expect(said).toMatch(/^Your crease point lies on the back neck point itself, where .* from it is wanted\./);
  });
});
