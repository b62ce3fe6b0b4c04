import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { DRAFT_LENGTH } from '../../src/drafting/limits.ts';
import { readSteps } from '../../src/drafting/read.ts';
import { drafts } from './arbitrary.ts';
import { spoken } from './block.ts';

const refusals = (json: unknown): readonly string[] => {
  const read = readSteps(json);
  return read.ok ? [] : read.errors.map(({ path, message }) => `${path} | ${spoken(message)}`);
};

const edge = { verb: 'parallel', name: 'edge', to: 'centre-front', distance: 'overlap', side: 'left' };

describe('reading and writing', () => {
  test('are inverse: what is written and read again is the same', () => {
    fc.assert(
      fc.property(drafts(6), (steps) => {
        const json: unknown = JSON.parse(JSON.stringify(steps));
        const read = readSteps(json);
        expect(read).toEqual({ ok: true, steps: json });
        // Reading puts the fields in order, so a second writing is the same to the letter.
        const text = JSON.stringify(read.ok && read.steps);
        const again = readSteps(JSON.parse(text));
        expect(JSON.stringify(again.ok && again.steps)).toBe(text);
      }),
      { numRuns: 2000 },
    );
  });

  test('put the fields in the order of the language and leave the input alone', () => {
    const loose = Object.freeze({
      side: 'left',
      distance: 'overlap',
      answers: 'x',
      to: 'waist',
      name: 'a',
      verb: 'parallel',
    });
    const read = readSteps([loose]);
    expect(read.ok && Object.keys(read.steps[0] ?? {})).toEqual(['verb', 'name', 'answers', 'to', 'distance', 'side']);
    expect(read.ok && read.steps[0]).not.toBe(loose);
  });
});

describe('a refusal names the step, the field, what was found and what to do', () => {
  test('of what is no list of steps', () => {
    expect([null, 'steps', 5, {}].flatMap(refusals)).toMatchInlineSnapshot(`
      [
        " | A draft is a list of steps, and nothing was found. Put the steps between [ and ].",
        " | A draft is a list of steps, and “steps” was found. Put the steps between [ and ].",
        " | A draft is a list of steps, and the number 5 was found. Put the steps between [ and ].",
        " | A draft is a list of steps, and a group of fields was found. Put the steps between [ and ].",
      ]
    `);
    expect(refusals(Array.from({ length: DRAFT_LENGTH + 1 }, () => edge))).toMatchInlineSnapshot(`
      [
        " | The draft has 501 steps, and no more than 500 are read. Take out steps that nothing needs.",
      ]
    `);
  });

  test('of steps that are none', () => {
    expect(
      refusals([null, 'along', [], {}, { verb: 'paralel', name: 'a' }, { verb: 7, name: 'b' }, { verb: 'sew' }]),
    ).toMatchInlineSnapshot(`
      [
        "[0] | Step 1: A step is an object with a verb and a name, and nothing was found.",
        "[1] | Step 2: A step is an object with a verb and a name, and “along” was found.",
        "[2] | Step 3: A step is an object with a verb and a name, and a list of 0 was found.",
        "[3].verb | Step 4, “verb”: A verb of the language is expected, and nothing was found. The verbs are pencil, along, cross, compass, foot, part, rule, square, parallel, slant, curve, offset, seam, fold, swing, tape, protractor.",
        "[4].verb | Step 5 (a), “verb”: A verb of the language is expected, and “paralel” was found. Did you mean “parallel”?",
        "[5].verb | Step 6 (b), “verb”: A verb of the language is expected, and the number 7 was found. The verbs are pencil, along, cross, compass, foot, part, rule, square, parallel, slant, curve, offset, seam, fold, swing, tape, protractor.",
        "[6].verb | Step 7, “verb”: A verb of the language is expected, and “sew” was found. The verbs are pencil, along, cross, compass, foot, part, rule, square, parallel, slant, curve, offset, seam, fold, swing, tape, protractor.",
      ]
    `);
  });

  test('of names', () => {
    expect(
      refusals([
        edge,
        edge,
        { ...edge, name: 'Edge' },
        { ...edge, name: 'left' },
        { ...edge, name: 'cm' },
        { ...edge, name: 4 },
        { ...edge, name: undefined },
        { ...edge, name: 'e2', answers: 'The Edge' },
        { ...edge, name: 'e3', to: 'no name' },
        { ...edge, name: 'e4', to: 'wa\u001bist' },
      ]),
    ).toMatchInlineSnapshot(`
      [
        "[1].name | Step 2 (edge), “name”: “edge” is already the name of what step 1 makes. Choose another name.",
        "[2].name | Step 3, “name”: “Edge” cannot be a name. Use words and numbers, beginning with a letter, such as roll line or mark 2. In a file they are in small letters and joined by hyphens: roll-line.",
        "[3].name | Step 4 (left), “name”: “left” is a word of the drafting language and cannot name an object. Choose another name.",
        "[4].name | Step 5 (cm), “name”: “cm” is a word of the drafting language and cannot name an object. Choose another name.",
        "[5].name | Step 6, “name”: This should be a name, such as roll-line; the number 4 was found.",
        "[6].name | Step 7, “name”: This is missing. It takes a name, such as roll-line.",
        "[7].answers | Step 8 (e2), “answers”: “The Edge” cannot be a name. Use words and numbers, beginning with a letter, such as roll line or mark 2. In a file they are in small letters and joined by hyphens: roll-line.",
        "[8].to | Step 9 (e3), “to”: “no name” cannot be a name. Use words and numbers, beginning with a letter, such as roll line or mark 2. In a file they are in small letters and joined by hyphens: roll-line.",
        "[9].to | Step 10 (e4), “to”: “wa\\u001bist” cannot be a name. Use words and numbers, beginning with a letter, such as roll line or mark 2. In a file they are in small letters and joined by hyphens: roll-line.",
      ]
    `);
  });

  test('of fields that are missing, strange or of another form', () => {
    expect(
      refusals([
        { verb: 'rule', name: 'a', from: 'b' },
        { verb: 'rule', name: 'b', from: 'b', to: 'c', too: 'd' },
        { verb: 'rule', name: 'c', from: 'b', to: 'c', colour: 'red' },
        { ...edge, name: 'd', through: 'neck-point' },
        { ...edge, name: 'e', distnce: '5 mm', distance: undefined },
        JSON.parse('{"verb": "rule", "name": "f", "from": "a", "to": "b", "__proto__": {}}'),
        { verb: 'tape', name: 'g', along: 'b', from: null },
      ]),
    ).toMatchInlineSnapshot(`
      [
        "[0].to | Step 1 (a), “to”: This is missing. It takes a point.",
        "[1].too | Step 2 (b), “too”: There is no such field here. Did you mean “to”?",
        "[2].colour | Step 3 (c), “colour”: A rule step has no such field. Take it out; its fields are from, to.",
        "[3].through | Step 4 (d), “through”: This does not go with the other fields. A parallel step has either “to, distance, side” or “to, through”.",
        "[4].distance | Step 5 (e), “distance”: This is missing. It takes a length, such as 3.2 cm or stand + 6 mm.",
        "[4].distnce | Step 5 (e), “distnce”: There is no such field here. Did you mean “distance”?",
        "[5].__proto__ | Step 6 (f), “__proto__”: A rule step has no such field. Take it out; its fields are from, to.",
        "[6].from | Step 7 (g), “from”: This should be a point; nothing was found.",
      ]
    `);
  });

  test('of values that do not fit their blank', () => {
    const curve = { verb: 'curve', through: ['a', 'b'] };
    expect(
      refusals([
        { ...edge, distance: 25 },
        { ...edge, name: 'b', distance: '' },
        { ...edge, name: 'c', distance: 'x'.repeat(201) },
        { ...edge, name: 'c2', distance: 'over\u202elap' },
        { ...edge, name: 'd', side: ['left'] },
        { verb: 'pencil', name: 'e', at: [1] },
        { verb: 'pencil', name: 'f', at: [1, '2'] },
        { verb: 'pencil', name: 'g', at: [1, 1e9] },
        { verb: 'slant', name: 'h', to: 'a', angle: '1 deg', turn: 'left', through: 'b' },
        { verb: 'cross', name: 'i', one: 'a', other: 'b', near: [1, 2, 3] },
        { verb: 'cross', name: 'j', one: 'a', other: 'b', near: { x: 1 } },
        { ...curve, name: 'k', through: ['a'] },
        { ...curve, name: 'l', through: ['a', 3] },
        { ...curve, name: 'm', through: Array.from({ length: 101 }, () => 'a') },
        { ...curve, name: 'n', leave: 'a' },
        { ...curve, name: 'o', leave: {} },
        { ...curve, name: 'p', leave: { along: 'a', square: 'b' } },
        { ...curve, name: 'q', shape: [null, { turn: 7, before: 0, after: 0.3 }] },
        { ...curve, name: 'r', shape: [0, { turn: 0.1, before: 0.2 }] },
        { verb: 'seam', name: 's', run: [] },
        {
          verb: 'seam',
          name: 't',
          run: ['a', 5, { along: 'b', from: 'c' }, { along: 'b', from: 'c', to: 'd', via: 'e' }],
        },
        { verb: 'seam', name: 'u', run: 'a' },
      ]),
    ).toMatchInlineSnapshot(`
      [
        "[0].distance | Step 1 (edge), “distance”: This should be a length, such as 3.2 cm or stand + 6 mm; the number 25 was found.",
        "[1].distance | Step 2 (b), “distance”: Nothing is written here. Write an amount, such as 3.2 cm, 1 1/4 in or stand + 6 mm.",
        "[2].distance | Step 3 (c), “distance”: This expression is longer than 200 characters. Tape a part of it first and use its name.",
        "[3].distance | Step 4 (c2), “distance”: This has characters in it that cannot be seen: “over\\u202elap”. Write it again by hand.",
        "[4].side | Step 5 (d), “side”: This should be left, right, up, down or the name of a point; a list of 1 was found.",
        "[5].at | Step 6 (e), “at”: This should be a place: two numbers in millimetres, across and up, none beyond 100000; a list of 1 was found.",
        "[6].at | Step 7 (f), “at”: This should be a place: two numbers in millimetres, across and up, none beyond 100000; a list of 2 was found.",
        "[7].at | Step 8 (g), “at”: This should be a place: two numbers in millimetres, across and up, none beyond 100000; a list of 2 was found.",
        "[8].turn | Step 9 (h), “turn”: This should be clockwise or anticlockwise; “left” was found.",
        "[9].near | Step 10 (i), “near”: This should be a place: two numbers in millimetres, across and up, none beyond 100000; a list of 3 was found.",
        "[10].near | Step 11 (j), “near”: This should be left, right, up, down, the name of a point, or a place; a group of fields was found.",
        "[11].through | Step 12 (k), “through”: This should be a list of two or more points; a list of 1 was found.",
        "[12].through[1] | Step 13 (l), “through[1]”: This should be a point; the number 3 was found.",
        "[13].through | Step 14 (m), “through”: More than 100 are listed here. Divide the step in two.",
        "[14].leave | Step 15 (n), “leave”: This should be a line to run along or square to; “a” was found.",
        "[15].leave.along | Step 16 (o), “leave.along”: This is missing. It takes a line.",
        "[16].leave.square | Step 17 (p), “leave.square”: There is no such field here. Take it out.",
        "[17].shape[1].turn | Step 18 (q), “shape[1].turn”: This should be an angle in radians, a full turn at most; the number 7 was found.",
        "[17].shape[1].before | Step 18 (q), “shape[1].before”: This should be a handle length as a fraction of the chord, from 0.01 to 10; the number 0 was found.",
        "[18].shape[0] | Step 19 (r), “shape[0]”: This should be a turn and two handle lengths, or null; the number 0 was found.",
        "[18].shape[1].after | Step 19 (r), “shape[1].after”: This is missing. It takes a handle length as a fraction of the chord, from 0.01 to 10.",
        "[19].run | Step 20 (s), “run”: This should be a list of points, curves and parts of curves; a list of 0 was found.",
        "[20].run[1] | Step 21 (t), “run[1]”: This should be a point, a curve, or a part of one; the number 5 was found.",
        "[20].run[2].to | Step 21 (t), “run[2].to”: This is missing. It takes a point.",
        "[20].run[3].via | Step 21 (t), “run[3].via”: There is no such field here. Take it out.",
        "[21].run | Step 22 (u), “run”: This should be a list of points, curves and parts of curves; “a” was found.",
      ]
    `);
  });
});
