import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { compute } from '../../src/drafting/expression/compute.ts';
import { putInExpression } from '../../src/drafting/expression/put-in.ts';
import type { Sign, Tree } from '../../src/drafting/expression/tree.ts';
import { evaluate, hasNumberOnly, namesIn, parse, print } from '../../src/drafting/expression.ts';
import { millimetres, type Quantity, radians } from '../../src/drafting/quantity.ts';
import { spoken } from './block.ts';

const measures = new Map<string, Quantity>([
  ['stand', millimetres(30)],
  ['fall', millimetres(42)],
  ['back-neck', millimetres(85)],
  ['mark-2', millimetres(7)],
  ['lean', radians(0.25)],
  ['nothing', millimetres(0)],
]);

const worth = (text: string): Quantity | string => {
  const found = evaluate(text, measures);
  return found.ok ? found.quantity : spoken(found.message);
};

// An inch is 25.4 mm exactly (international yard and pound agreement, 1959).
test.each([
  ['12 mm', 12],
  ['3.2cm', 32],
  ['.5 cm', 5],
  ['1 in', 25.4],
  ['2 inches', 50.8],
  ['1 inch', 25.4],
  ['1"', 25.4],
  ['1”', 25.4],
  ['1″', 25.4],
  ["1''", 25.4],
  ['1/4 in', 6.35],
  ['1 1/4 in', 31.75],
  ['1¼"', 31.75],
  ['1 ¼ in', 31.75],
  ['¾ in', 19.05],
  ['⅞ in', 22.225],
  ['1⁄2 in', 12.7],
  ['1\u00a01/4\u202fin', 31.75],
  ['2 MM', 2],
  ['stand', 30],
  ['Stand', 30],
  ['stand + fall', 72],
  ['stand+fall', 72],
  ['fall - stand', 12],
  ['fall − stand', 12],
  ['fall – stand', 12],
  ['back-neck + 6 mm', 91],
  ['back‑neck + 6 mm', 91],
  ['mark-2', 7],
  ['10 mm-3 mm', 7],
  ['stand -6 mm', 24],
  ['stand- 6 mm', 24],
  ['-stand', -30],
  ['- (stand - fall)', 12],
  ['--stand', 30],
  ['+stand', 30],
  ['stand * 2', 60],
  ['2 × stand', 60],
  ['2 · stand', 60],
  ['stand / 2', 15],
  ['stand ÷ 2', 15],
  ['stand/2 + 1 mm', 16],
  ['(fall - stand) * 1.42', 17.04],
  ['1/2 * stand', 15],
  ['stand - 1/4 in', 23.65],
  ['stand - fall - 1 mm', -13],
  ['fall / 3 * 2', 28],
  ['fall / (3 * 2)', 7],
  ['stand * lean', 7.5],
  ['lean * stand', 7.5],
  ['stand / 0.25 rad', 120],
])('%s is a length', (text, mm) => {
  expect(worth(text)).toEqual({ dimension: 'length', value: expect.closeTo(mm, 9) });
});

test.each([
  ['22.5 deg', Math.PI / 8],
  ['22.5°', Math.PI / 8],
  ['22 1/2°', Math.PI / 8],
  ['0.5 rad', 0.5],
  ['lean', 0.25],
  ['90 deg - lean', Math.PI / 2 - 0.25],
  ['lean / 2', 0.125],
])('%s is an angle', (text, value) => {
  expect(worth(text)).toEqual({ dimension: 'angle', value: expect.closeTo(value, 12) });
});

test.each([
  ['1/3', 1 / 3],
  ['⅓', 1 / 3],
  ['2 1/2', 2.5],
  ['stand / fall', 30 / 42],
  ['lean / 0.5 rad', 0.5],
  ['1 - 1/4', 0.75],
  ['3/4/2', 0.375],
])('%s is a plain number', (text, value) => {
  expect(worth(text)).toEqual({ dimension: 'number', value: expect.closeTo(value, 12) });
});

describe('what cannot be understood says what to write', () => {
  test.each([
    ['', 'Nothing is written here. Write an amount, such as 3.2 cm, 1 1/4 in or stand + 6 mm.'],
    ['  ', 'Nothing is written here. Write an amount, such as 3.2 cm, 1 1/4 in or stand + 6 mm.'],
    ['3,2 cm', 'Write a decimal with a point, not a comma: 3.2 cm.'],
    ['stand + 1,5cm', 'Write a decimal with a point, not a comma: 1.5cm.'],
    ['3 cm.', 'A point stands between figures, as in 3.2 cm. Take this one out.'],
    ['3.2 cms', '“cms” is not how a unit is written here. Write 3.2 cm.'],
    ['1 1/4 Inchs', '“inchs” is not how a unit is written here. Write 1 1/4 in.'],
    ['stand + 6 millimetres', '“millimetres” is not how a unit is written here. Write 6 mm.'],
    ['5 degrees', '“degrees” is not how a unit is written here. Write 5 deg.'],
    ['2x', 'Times is written with *, and not with x: 2 * stand, for example.'],
    ['fall less stand', '“less” is written as a sign here, -: fall - 6 mm, for example.'],
    ['stand and fall', '“and” is written as a sign here, +: stand + 6 mm, for example.'],
    ['half stand', '“half” is written as a sign here, / 2: stand / 2, for example.'],
    ['half the stand', '“half” is written as a sign here, / 2: stand / 2, for example.'],
    ['stand x 2', 'Times is written with *, and not with x: stand * 2, for example.'],
    ['stand x3', 'Times is written with *, and not with x: stand * 3, for example.'],
    ['stand & 2', '“&” has no meaning in an expression. Use numbers with units, names, + - * / and brackets.'],
    ['😀', '“😀” has no meaning in an expression. Use numbers with units, names, + - * / and brackets.'],
    ['stand +', 'The expression stops after “+”. Write a number or a name there.'],
    ['* 2', 'Before “*” a number or a name is missing. Write one there, or take the sign out.'],
    ['()', 'Before “)” a number or a name is missing. Write one there, or take the sign out.'],
    ['2 stand', 'Between “2” and “stand” a sign is missing. Write +, -, * or / between them.'],
    ['1 2 in', 'Between “1” and “2 in” a sign is missing. Write +, -, * or / between them.'],
    ['1.5 1/4 in', 'Between “1.5” and “1/4 in” a sign is missing. Write +, -, * or / between them.'],
    ['stand (2)', 'Between “stand” and “(” a sign is missing. Write +, -, * or / between them.'],
    ['(stand + fall', 'A bracket is opened and never closed. Write ) where it ends.'],
    ['stand)', 'A bracket is closed that was never opened. Take out the ) or write the ( it belongs to.'],
    [
      'back neck',
      '“back neck” reads as two names. If it is one, write it with a hyphen: back-neck. If not, write a sign between them.',
    ],
    ['mm', 'The unit mm has no number before it. Write one: 5 mm.'],
    ['stand mm', '“stand” carries its own unit. Take out the mm after it.'],
    [
      'stand-6 mm',
      'A hyphen inside a word belongs to its name. If you mean less, write spaces round it: stand - 6 mm.',
    ],
    [
      '10 mm-stand',
      'A hyphen inside a word belongs to its name. If you mean less, write spaces round it: 10 mm - stand.',
    ],
    ['1/0 in', '“1/0” divides by nothing. Write a number or a name that is not zero under the line.'],
    ['x'.repeat(201), 'This expression is longer than 200 characters. Tape a part of it first and use its name.'],
  ])('%s', (text, sentence) => {
    expect(worth(text)).toBe(sentence);
  });
});

describe('what comes to nothing useful says why', () => {
  test.each([
    [
      'fall-stand',
      'No measure and no taped length is called “fall-stand”. If you mean less, write spaces round the minus: fall - stand.',
    ],
    [
      'back-neck-stand',
      'No measure and no taped length is called “back-neck-stand”. If you mean less, write spaces round the minus: back-neck - stand.',
    ],
    [
      'fall-stand-2',
      'No measure and no taped length is called “fall-stand-2”. If you mean less, write spaces round the minus: fall - stand - 2.',
    ],
    ['stnad + 1 mm', 'No measure and no taped length is called “stnad”. Did you mean “stand”?'],
    ['bak-neck', 'No measure and no taped length is called “bak-neck”. Did you mean “back-neck”?'],
    ['hem', 'No measure and no taped length is called “hem”. Choose one from the list, or tape the length first.'],
    [
      'stand + lean',
      '“stand + lean” puts a length and an angle together. Only like amounts can be added or taken away.',
    ],
    ['stand + 6', '“6” has no unit. Say what it is: 6 mm, 0.6 cm or 1/4 in, for example.'],
    ['1-1/4 in', '“1” has no unit. Say what it is: 6 mm, 0.6 cm or 1/4 in, for example.'],
    ['90 - lean', '“90” has no unit. Say what it is: 22.5 deg, for example.'],
    ['stand * fall', 'A length times a length is an area, not a length. Multiply by a plain number.'],
    ['lean * lean', 'An angle times an angle is no angle. Multiply by a plain number.'],
    [
      '2 / stand',
      '“2 / stand” divides by a length, and what comes out is neither a length nor an angle. Divide by a plain number.',
    ],
    [
      'lean / stand',
      '“lean / stand” divides by a length, and what comes out is neither a length nor an angle. Divide by a plain number.',
    ],
    [
      '2 / lean',
      '“2 / lean” divides by an angle, and what comes out is neither a length nor an angle. Divide by a plain number.',
    ],
    [
      'stand / nothing',
      '“stand / nothing” divides by nothing. Write a number or a name that is not zero under the line.',
    ],
    [
      'stand / (fall - 42 mm)',
      '“stand / (fall - 42 mm)” divides by nothing. Write a number or a name that is not zero under the line.',
    ],
    ['999999 * 999999 mm', 'This comes to a number too large to draw. Check the figures in it.'],
    [`${'9'.repeat(190)} in`, 'This comes to a number too large to draw. Check the figures in it.'],
  ])('%s', (text, sentence) => {
    expect(worth(text)).toBe(sentence);
  });
});

const name = fc.constantFrom('stand', 'fall', 'back-neck', 'mark-2', 'lean', 'q-3-b', 'unknown');
const literal = fc
  .tuple(
    fc.constantFrom('7', '12.50', '.5', '3/8', '1 1/4', '0'),
    fc.constantFrom('', ' mm', ' cm', ' in', ' deg', ' rad'),
  )
  .map(([number, unit]) => (parse(number + unit) as { tree: Tree }).tree);
const trees = fc.letrec<{ tree: Tree }>((tie) => ({
  tree: fc.oneof(
    { maxDepth: 5, depthIdentifier: 'tree' },
    literal,
    name.map((one): Tree => ({ kind: 'name', name: one })),
    tie('tree').map((of): Tree => ({ kind: 'minus', of })),
    fc
      .tuple(fc.constantFrom<Sign>('+', '-', '*', '/'), tie('tree'), tie('tree'))
      .map(([sign, left, right]): Tree => ({ kind: 'pair', sign, left, right })),
  ),
})).tree;

describe('parsing and printing', () => {
  test('are inverse: what is printed parses to the same tree', () => {
    fc.assert(
      fc.property(trees, (tree) => {
        const text = print(tree);
        fc.pre(text.length <= 200);
        expect(parse(text)).toEqual({ ok: true, tree });
      }),
      { numRuns: 5000 },
    );
  });

  test('keep the value: an expression and its printing come to the same, or fail the same', () => {
    fc.assert(
      fc.property(trees, (tree) => {
        const text = print(tree);
        fc.pre(text.length <= 200);
        const unknown = (missing: string) => ({ key: 'problem.unknown', values: { name: missing } }) as const;
        const parsed = parse(text);
        expect(parsed.ok && compute(parsed.tree, measures, unknown)).toEqual(compute(tree, measures, unknown));
      }),
      { numRuns: 2000 },
    );
  });

  test('a printed expression has no bracket it could do without', () => {
    expect(
      ['(stand)+(fall*2)', '((fall - stand))*1.5', 'stand - (fall - stand)', '-(stand)*2', '(stand - fall)-stand'].map(
        (text) => {
          const parsed = parse(text);
          return parsed.ok && print(parsed.tree);
        },
      ),
    ).toEqual([
      'stand + fall * 2',
      '(fall - stand) * 1.5',
      'stand - (fall - stand)',
      '-stand * 2',
      'stand - fall - stand',
    ]);
  });
});

describe('arithmetic agrees with the language it is written in', () => {
  // Oracle: the same tree worked out by JavaScript itself, all its numbers being plain.
  const plain = fc.letrec<{ text: string }>((tie) => ({
    text: fc.oneof(
      { maxDepth: 4, depthIdentifier: 'plain' },
      fc.integer({ min: 1, max: 9 }).map(String),
      fc.tuple(tie('text'), fc.constantFrom('+', '-', '*', '/'), tie('text')).map(([a, s, b]) => `(${a}) ${s} (${b})`),
    ),
  })).text;

  test('on plain numbers', () => {
    fc.assert(
      fc.property(plain, (text) => {
        fc.pre(text.length <= 200);
        const expected = new Function(`return ${text}`)() as number;
        const found = worth(text);
        if (typeof found === 'string') expect(found).toMatch(/divides by nothing|too large/);
        else expect(found.value).toBe(expected);
      }),
      { numRuns: 2000 },
    );
  });
});

test('never throws and never gives a number that is not finite, whatever is typed', () => {
  const scraps = fc.constantFrom(
    'stand',
    'fall',
    '-',
    '+',
    '*',
    '/',
    '(',
    ')',
    ' ',
    '1',
    '0',
    '.',
    '½',
    '"',
    '°',
    'mm',
    'in',
    '9e99',
    ',',
  );
  const text = fc.oneof(
    fc.string({ unit: 'binary', maxLength: 60 }),
    fc.array(scraps, { maxLength: 60 }).map((all) => all.join('')),
  );
  fc.assert(
    fc.property(text, (typed) => {
      const found = evaluate(typed, measures);
      if (found.ok) expect(Number.isFinite(found.quantity.value)).toBe(true);
      else expect(spoken(found.message)).not.toBe('');
    }),
    { numRuns: 10_000 },
  );
});

test('names in an expression are told from units and numbers', () => {
  expect(namesIn('(fall - stand) * 2 + fall + 3 mm')).toEqual(['fall', 'stand']);
  expect(namesIn('1 1/4 in')).toEqual([]);
  expect(namesIn('stand +')).toEqual([]);
});

test('an expression of numbers alone is known as such', () => {
  expect(['1 1/4 in', '(2 + 3) * 4 mm', 'stand', '2 * stand', 'oops oops', ''].map(hasNumberOnly)).toEqual([
    true,
    true,
    false,
    false,
    false,
    false,
  ]);
});

test('an expression is put in for a name, in brackets where it needs them', () => {
  expect(putInExpression('(fall - stand) * 2 + -stand', 'stand', 'band')).toBe('(fall - band) * 2 + -band');
  expect(putInExpression('overlap-by-rule', 'overlap-by-rule', 'button * 2')).toBe('button * 2');
  expect(putInExpression('fall - by-rule', 'by-rule', 'stand - 1/4 in')).toBe('fall - (stand - 1/4 in)');
  expect(putInExpression('stand  +3 cm', 'fall', 'stand * 2')).toBe('stand  +3 cm');
  expect(putInExpression('stand +', 'stand', 'fall')).toBe('stand +');
});
