import { describe, expect, test } from 'vitest';
import { DRAFT_LENGTH } from '../../src/drafting/limits.ts';
import { millimetres } from '../../src/drafting/quantity.ts';
import type { Shape } from '../../src/drafting/shape.ts';
import { block, draft, lineOf, pointOf, problemsOf, taped } from './block.ts';

const edge = { verb: 'parallel', name: 'edge', to: 'centre-front', distance: 'overlap', side: 'left' };
const level = { verb: 'parallel', name: 'level', to: 'waist', distance: 'break-rise', side: 'up' };
const breakPoint = { verb: 'cross', name: 'mark', one: 'edge', other: 'level', answers: 'break-point' };
const stand = {
  verb: 'along',
  name: 'stand-mark',
  on: 'shoulder-line',
  from: 'neck-point',
  distance: 'stand',
  toward: 'left',
};
const roll = { verb: 'rule', name: 'roll', from: 'mark', to: 'stand-mark', answers: 'roll-line' };
const rollDraft = [edge, level, breakPoint, stand, roll];

describe('replaying a draft', () => {
  test('gives every object a name, given or made, and says what answers which target', () => {
    const sheet = draft(rollDraft);
    expect(sheet.problems).toEqual([]);
    expect([...sheet.shapes.keys()].slice(block.shapes.size)).toEqual(['edge', 'level', 'mark', 'stand-mark', 'roll']);
    expect([...sheet.answers]).toEqual([
      ['break-point', 'mark'],
      ['roll-line', 'roll'],
    ]);
  });

  test('leaves what is given as it was', () => {
    const before = new Map(block.shapes);
    draft(rollDraft);
    expect(block.shapes).toEqual(before);
    expect(block.measures.has('edge')).toBe(false);
  });

  test('counts the later of two claims to a target, even one that could not be carried out', () => {
    const again = { verb: 'pencil', name: 'again', at: [0, 0], answers: 'break-point' };
    const broken = { verb: 'foot', name: 'broken', from: 'nowhere', on: 'waist', answers: 'break-point' };
    expect(draft([...rollDraft, again]).answers.get('break-point')).toBe('again');
    expect(draft([...rollDraft, again, broken]).answers.get('break-point')).toBe('broken');
  });
});

describe('a step that fails', () => {
  test('does not stop those that do not need it, and those that do say which step to mend', () => {
    const steps = [
      { ...edge, distance: 'overlp' },
      ...rollDraft.slice(1),
      { verb: 'tape', name: 't', from: 'mark', to: 'neck-point' },
    ];
    expect(draft(steps).shapes.has('stand-mark')).toBe(true);
    expect(problemsOf(steps)).toMatchInlineSnapshot(`
      [
        "1 distance: No measure and no taped length is called “overlp”. Did you mean “overlap”?",
        "3 one: edge is not there because step 1 could not be carried out. Mend step 1 first.",
        "5 from: mark is not there because step 1 could not be carried out. Mend step 1 first.",
        "6 from: mark is not there because step 1 could not be carried out. Mend step 1 first.",
      ]
    `);
  });

  test('leaves its length unknown to the expressions after it', () => {
    const steps = [
      { verb: 'tape', name: 'depth', along: 'waist' },
      { verb: 'parallel', name: 'l', to: 'waist', distance: 'depth + 1 cm', side: 'up' },
      { verb: 'parallel', name: 'm', to: 'waist', distance: 'later', side: 'up' },
      { verb: 'tape', name: 'later', along: 'neckline' },
      { verb: 'parallel', name: 'n', to: 'waist', distance: 'neckline / 2', side: 'up' },
    ];
    expect(problemsOf(steps)).toMatchInlineSnapshot(`
      [
        "1 from: waist is a line without ends. Say from which point to which point it is to be taken.",
        "2 distance: depth is not there because step 1 could not be carried out. Mend step 1 first.",
        "3 distance: later is made only in step 4. Use something that is there before this step.",
        "5 distance: “neckline” is a curve, not a length. Tape it first, then write the name of the length.",
      ]
    `);
  });
});

describe('what names an object', () => {
  test('must be there, before the step, and of the right kind', () => {
    const foot = (name: string, from: unknown, on: unknown) => ({ verb: 'foot', name, from, on });
    expect(
      problemsOf([
        foot('f1', 'neck-pont', 'waist'),
        foot('f2', 'elsewhere', 'waist'),
        foot('f3', 'neck-point', 'neckline'),
        foot('f4', 'overlap', 'waist'),
        foot('f5', 'f5', 'waist'),
        foot('f6', 'f7', 'waist'),
        foot('f7', 'neck-point', 'waist'),
        foot('f8', 17, 'waist'),
        { verb: 'foot', name: 'f9', from: 'neck-point' },
        foot('f10', 'waist', 'waist'),
        { verb: 'fold', name: 'f11', what: 'long', over: 'waist' },
        { verb: 'tape', name: 'long', along: 'neckline' },
        { verb: 'fold', name: 'f12', what: 'long', over: 'waist' },
        { verb: 'square', name: 'f13', to: 'neck-point', through: 'neck-point' },
      ]),
    ).toMatchInlineSnapshot(`
      [
        "1 from: Nothing on the sheet is called “neck-pont”. Did you mean “neck-point”?",
        "2 from: Nothing on the sheet is called “elsewhere”. Choose something that is there.",
        "3 on: neckline is a curve, and a line is wanted here.",
        "4 from: overlap is a measure, with no place on the sheet, and a point is wanted here.",
        "5 from: f5 is what this step makes, so the step cannot use it. Choose something that is there before it.",
        "6 from: f7 is made only in step 7. Use something that is there before this step.",
        "8 from: What stands in this blank cannot be read. It takes a point.",
        "9 on: A blank of this step is empty. Fill it by pointing, choosing or typing.",
        "10 from: waist is a line, and a point is wanted here.",
        "11 what: long is made only in step 12. Use something that is there before this step.",
        "13 what: long is a length, and a point, a line or a curve is wanted here.",
        "14 to: neck point is a point, and a line or a curve is wanted here.",
      ]
    `);
  });
});

describe('the name a step gives', () => {
  test('follows the grammar, is free, and is no word of the language', () => {
    const pencil = (name: unknown) => ({ verb: 'pencil', name, at: [0, 0] });
    const names = ['mark-2', 'Mark', 'mark--3', '-mark', '2-mark', '', undefined, 7, 'x'.repeat(61), 'left', 'in'];
    expect(problemsOf([...names, 'waist', 'stand', 'mark-2'].map(pencil))).toMatchInlineSnapshot(`
      [
        "2 name: “Mark” cannot be a name. Use words and numbers, beginning with a letter, such as roll line or mark 2. In a file they are in small letters and joined by hyphens: roll-line.",
        "3 name: “mark--3” cannot be a name. Use words and numbers, beginning with a letter, such as roll line or mark 2. In a file they are in small letters and joined by hyphens: roll-line.",
        "4 name: “-mark” cannot be a name. Use words and numbers, beginning with a letter, such as roll line or mark 2. In a file they are in small letters and joined by hyphens: roll-line.",
        "5 name: “2-mark” cannot be a name. Use words and numbers, beginning with a letter, such as roll line or mark 2. In a file they are in small letters and joined by hyphens: roll-line.",
        "6 name: This step has no name. Give it one, such as roll-line or mark-2.",
        "7 name: This step has no name. Give it one, such as roll-line or mark-2.",
        "8 name: “7” cannot be a name. Use words and numbers, beginning with a letter, such as roll line or mark 2. In a file they are in small letters and joined by hyphens: roll-line.",
        "9 name: “xxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxxx…” cannot be a name. Use words and numbers, beginning with a letter, such as roll line or mark 2. In a file they are in small letters and joined by hyphens: roll-line.",
        "10 name: “left” is a word of the drafting language and cannot name an object. Choose another name.",
        "11 name: “in” is a word of the drafting language and cannot name an object. Choose another name.",
        "12 name: “waist” is already the name of something given. Choose another name.",
        "13 name: “stand” is already the name of something given. Choose another name.",
        "14 name: “mark-2” is already the name of what step 1 makes. Choose another name.",
      ]
    `);
  });
});

test('what is no step at all is a problem on its place', () => {
  expect(
    problemsOf([null, 'along', 12, [], {}, { name: 'a' }, { verb: 'snip', name: 'b' }, { verb: {}, name: 'c' }]),
  ).toMatchInlineSnapshot(`
    [
      "1 -: This is not a step that can be read. Erase it and draw it again.",
      "2 -: This is not a step that can be read. Erase it and draw it again.",
      "3 -: This is not a step that can be read. Erase it and draw it again.",
      "4 -: This is not a step that can be read. Erase it and draw it again.",
      "5 name: This step has no name. Give it one, such as roll-line or mark-2.",
      "6 verb: This step does not say which tool it is drawn with. Erase it and draw it again.",
      "7 verb: No tool is called “snip”. Erase the step and draw it with a tool of the table.",
      "8 verb: This step does not say which tool it is drawn with. Erase it and draw it again.",
    ]
  `);
});

describe('amounts', () => {
  const parallel = (name: string, distance: unknown) => ({ ...edge, name, distance });
  test('must have the dimension the blank wants', () => {
    expect(
      problemsOf([
        parallel('a1', '25'),
        parallel('a2', 'shoulder-slope'),
        parallel('a3', 25),
        parallel('a4', ''),
        { verb: 'slant', name: 'a5', to: 'waist', angle: '22.5', turn: 'clockwise', through: 'neck-point' },
        { verb: 'slant', name: 'a6', to: 'waist', angle: 'stand', turn: 'clockwise', through: 'neck-point' },
        { verb: 'part', name: 'a7', from: 'neck-point', to: 'shoulder-tip', fraction: 'stand' },
        { verb: 'slant', name: 'a8', to: 'waist', angle: '1 deg', turn: 'left', through: 'neck-point' },
        parallel('a9', 'fall-stand'),
      ]),
    ).toMatchInlineSnapshot(`
      [
        "1 distance: “25” is a bare number, and a length is wanted. Give it a unit: 25 cm or 25 in.",
        "2 distance: “shoulder-slope” is an angle, and a length is wanted here.",
        "3 distance: What stands in this blank cannot be read. It takes a length, such as 3.2 cm or stand + 6 mm.",
        "4 distance: Nothing is written here. Write an amount, such as 3.2 cm, 1 1/4 in or stand + 6 mm.",
        "5 angle: “22.5” is a bare number, and an angle is wanted. Give it a unit: 22.5 deg, for example.",
        "6 angle: “stand” is a length, and an angle is wanted here.",
        "7 fraction: “stand” is a length, and a plain number is wanted here.",
        "8 turn: What stands in this blank cannot be read. It takes clockwise or anticlockwise.",
        "9 distance: No measure and no taped length is called “fall-stand”. If you mean less, write spaces round the minus: fall - stand.",
      ]
    `);
  });
});

describe('what runs off the sheet', () => {
  test('is a problem, not a number that means nothing', () => {
    expect(
      problemsOf([
        { verb: 'pencil', name: 'o1', at: [1e6, 0] },
        { verb: 'pencil', name: 'o2', at: [Number.NaN, 0] },
        { verb: 'pencil', name: 'o3', at: [0, 0, 0] },
        { verb: 'part', name: 'o4', from: 'neck-point', to: 'shoulder-tip', fraction: '999999' },
        { verb: 'slant', name: 'o5', to: 'waist', angle: '0.0001 deg', turn: 'clockwise', through: 'neck-point' },
        { verb: 'cross', name: 'o6', one: 'o5', other: 'waist' },
        { verb: 'parallel', name: 'o7', to: 'waist', distance: '200000 mm', side: 'up' },
        {
          verb: 'swing',
          name: 'o8',
          what: 'neckline',
          about: 'shoulder-tip',
          by: '1 mm',
          at: '0.0000000000001 mm',
          turn: 'clockwise',
        },
      ]),
    ).toMatchInlineSnapshot(`
      [
        "1 at: This would lie more than a hundred metres away. Check the distances, or lines that hardly lean toward each other.",
        "2 at: What stands in this blank cannot be read. It takes a place: two numbers in millimetres, across and up, none beyond 100000.",
        "3 at: What stands in this blank cannot be read. It takes a place: two numbers in millimetres, across and up, none beyond 100000.",
        "4 -: This would lie more than a hundred metres away. Check the distances, or lines that hardly lean toward each other.",
        "6 -: This would lie more than a hundred metres away. Check the distances, or lines that hardly lean toward each other.",
        "7 -: This would lie more than a hundred metres away. Check the distances, or lines that hardly lean toward each other.",
      ]
    `);
  });

  test('a curve of curves of curves stops growing', () => {
    const loop = ['neck-point', 'front-neck-point', 'shoulder-tip', 'neck-point'];
    const first = { verb: 'seam', name: 's0', run: Array.from({ length: 24 }, () => loop).flat() };
    const twice = Array.from({ length: 6 }, (_, i) => ({ verb: 'seam', name: `s${i + 1}`, run: [`s${i}`, `s${i}`] }));
    expect(problemsOf([first, ...twice])[0]).toMatchInlineSnapshot(
      `"6 -: This curve would be made of more than 2000 pieces. Draw it afresh through fewer points."`,
    );
  });
});

describe('pins', () => {
  const point = (x: number, y: number): Shape => ({ kind: 'point', point: { x, y } });

  test('put a target in the place of what its step would make, under the step’s own name', () => {
    const sheet = draft(rollDraft, new Map([['break-point', point(-30, 60)]]));
    expect(pointOf(sheet, 'mark')).toEqual({ x: -30, y: 60 });
    expect(lineOf(sheet, 'roll').through).toEqual({ x: -30, y: 60 });
    expect(sheet.answers.get('break-point')).toBe('mark');
  });

  test('stand in for a step that could not be carried out', () => {
    const steps = rollDraft.with(0, { ...edge, to: 'nothing' });
    const sheet = draft(steps, new Map([['break-point', point(-30, 60)]]));
    expect(sheet.problems.map(({ name }) => name)).toEqual(['edge']);
    expect(lineOf(sheet, 'roll').through).toEqual({ x: -30, y: 60 });
  });

  test('of another kind are let be', () => {
    const plain = draft(rollDraft);
    const odd: Shape = { kind: 'length', length: 3 };
    expect(
      draft(
        rollDraft,
        new Map([
          ['break-point', odd],
          ['roll-line', point(0, 0)],
        ]),
      ).shapes,
    ).toEqual(plain.shapes);
  });

  test('go by what is folded or swung for the kind', () => {
    const fold = { verb: 'fold', name: 'f', what: 'neck-point', over: 'centre-front', answers: 'notch' };
    const line: Shape = { kind: 'line', line: { through: { x: 0, y: 0 }, direction: { x: 1, y: 0 } } };
    expect(pointOf(draft([fold], new Map([['notch', point(1, 2)]])), 'f')).toEqual({ x: 1, y: 2 });
    expect(pointOf(draft([fold], new Map([['notch', line]])), 'f')).toEqual({ x: expect.closeTo(-70, 9), y: 400 });
    expect(pointOf(draft([{ ...fold, what: 'gone' }], new Map([['notch', point(1, 2)]])), 'f')).toEqual({ x: 1, y: 2 });
  });

  test('of a length are known to expressions', () => {
    const steps = [
      { verb: 'tape', name: 'back', along: 'neckline', answers: 'back-neck' },
      { verb: 'parallel', name: 'l', to: 'waist', distance: 'back', side: 'up' },
    ];
    const sheet = draft(steps, new Map([['back-neck', { kind: 'length', length: 50 }]]));
    expect(taped(sheet, 'back')).toBe(50);
    expect(sheet.measures.get('back')).toEqual(millimetres(50));
    expect(lineOf(sheet, 'l').through.y).toBeCloseTo(50, 12);
  });
});

test('a long draft is replayed in a time that does not grow out of hand', () => {
  const steps = Array.from({ length: DRAFT_LENGTH }, (_, i) => ({
    ...edge,
    name: `edge-${i}`,
    to: i === 0 ? 'centre-front' : `edge-${i - 1}`,
    distance: '0.1 mm',
  }));
  const started = performance.now();
  expect(draft(steps).problems).toEqual([]);
  expect(performance.now() - started).toBeLessThan(2000);
});

test('of steps that fall one with the other the first is named, and not the one before: it alone has to be mended', () => {
  const said = problemsOf([
    { verb: 'parallel', name: 'one', to: 'waist', distance: '1 cm', side: 'left' },
    { verb: 'foot', name: 'two', from: 'neck-point', on: 'one' },
    { verb: 'tape', name: 'three', from: 'two', to: 'neck-point' },
    { verb: 'parallel', name: 'four', to: 'waist', distance: 'three', side: 'up' },
  ]);
  expect(said).toHaveLength(4);
  for (const words of said.slice(1)) expect(words).toContain('Mend step 1 first.');
});
