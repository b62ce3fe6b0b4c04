import { describe, expect, test } from 'vitest';
import { endOf, startOf } from '../../../src/geometry/path.ts';
import { distance } from '../../../src/geometry/point.ts';
import { draft, pathOf, pointOf, problemsOf, taped } from '../block.ts';

const marks = [
  { verb: 'pencil', name: 'a', at: [0, 250] },
  { verb: 'pencil', name: 'b', at: [30, 290] },
];
const joined = (run: readonly unknown[], ...before: readonly unknown[]) =>
  draft([...marks, ...before, { verb: 'seam', name: 's', run }, { verb: 'tape', name: 'length', along: 's' }]);
const ends = (sheet: ReturnType<typeof joined>) => [startOf(pathOf(sheet, 's')), endOf(pathOf(sheet, 's'))];

describe('a run', () => {
  test('of points is joined by straight runs', () => {
    const sheet = joined(['a', 'b', 'front-neck-point']);
    expect(taped(sheet, 'length')).toBeCloseTo(50 + Math.hypot(30, 30), 9);
  });

  test('takes each curve in at its nearer end, whichever way it was drawn', () => {
    const whole = taped(draft([{ verb: 'tape', name: 't', along: 'neckline' }]), 't');
    const up = joined(['a', 'front-neck-point', 'neckline', 'neck-point', 'b']);
    const down = joined(['b', 'neck-point', 'neckline', 'front-neck-point', 'a']);
    for (const sheet of [up, down]) {
      expect(taped(sheet, 'length')).toBeCloseTo(70 + whole + Math.hypot(40, 110), 6);
    }
    expect(ends(down)).toEqual([
      { x: 30, y: 290 },
      { x: 0, y: 250 },
    ]);
  });

  test('that begins with a curve turns it toward what follows', () => {
    const reversed = joined(['neckline', 'front-neck-point', 'a']);
    expect(ends(reversed)).toEqual([
      { x: 70, y: 400 },
      { x: 0, y: 250 },
    ]);
  });

  test('of two curves joins them where they meet', () => {
    const lower = { verb: 'curve', name: 'lower', through: ['a', 'front-neck-point'] };
    for (const run of [
      ['lower', 'neckline'],
      ['neckline', 'lower'],
    ]) {
      const sheet = joined(run, lower);
      expect(sheet.problems).toEqual([]);
      expect(taped(sheet, 'length')).toBeGreaterThan(70 + Math.hypot(70, 80));
    }
  });

  test('takes parts of lines and curves between two points', () => {
    const half = { verb: 'along', name: 'half', on: 'neckline', from: 'neck-point', distance: '6 cm', toward: 'down' };
    const run = [
      { along: 'neckline', from: 'neck-point', to: 'half' },
      'half',
      { along: 'centre-front', from: 'half', to: 'front-neck-point' },
    ];
    const apart = problemsOf([...marks, half, { verb: 'seam', name: 's', run }]);
    expect(apart[0]).toMatch(/^4 run: half and centre front do not meet: they are 5 cm apart where they should join\./);
    const onLine = joined(
      [
        { along: 'neckline', from: 'half', to: 'neck-point' },
        { along: 'shoulder-line', from: 'shoulder-tip', to: 'neck-point' },
      ],
      half,
    );
    expect(onLine.problems).toEqual([]);
    expect(taped(onLine, 'length')).toBeCloseTo(60 + 130, 6);
    expect(distance(endOf(pathOf(onLine, 's')), pointOf(onLine, 'shoulder-tip'))).toBeLessThan(1e-9);
  });
});

test('a seam may be closed', () => {
  const sheet = joined(['a', 'b', 'front-neck-point', 'a']);
  expect(taped(sheet, 'length')).toBeCloseTo(50 + Math.hypot(30, 30) + 70, 9);
});

test('points that lie together add nothing', () => {
  const twin = { verb: 'pencil', name: 'twin', at: [30, 290] };
  expect(taped(joined(['a', 'b', 'twin', 'b'], twin), 'length')).toBeCloseTo(50, 9);
});

test('what cannot be joined is a problem', () => {
  const far = { verb: 'curve', name: 'far', through: ['a', 'b'] };
  const seam = (name: string, ...run: readonly unknown[]) => ({ verb: 'seam', name, run });
  expect(
    problemsOf([
      ...marks,
      far,
      seam('s1', 'neckline', 'far'),
      seam('s2', 'neckline', 'a'),
      { verb: 'pencil', name: 'nearly', at: [0, 319.7] },
      seam('s2b', 'neckline', 'nearly'),
      seam('s3', 'a'),
      seam('s4', 'a', 'waist'),
      seam('s5', { along: 'waist', from: 'a', to: 'front-neck-point' }),
      seam('s6', { along: 'neckline', from: 'a', to: 'a' }),
      seam('s7', 'a', { along: 'neckline', from: 'a' }),
      seam('s8', 7),
    ]),
  ).toMatchInlineSnapshot(`
    [
      "4 run: neckline and far do not meet: they are 4.2 cm apart where they should join. Join them by points, or draw them to meet.",
      "5 run: neckline and a do not meet: they are 7 cm apart where they should join. Join them by points, or draw them to meet.",
      "7 run: neckline and nearly miss each other by a hair where they should join. End both at one point.",
      "8 run: This run has no length. Join at least two points that lie apart, or a curve.",
      "9 run: waist is a line without ends. Name the marks between which it runs: two in a row are joined straight.",
      "10 run: The part of waist taken here has no length. Choose two points that lie apart on it.",
      "11 run: The part of neckline taken here has no length. Choose two points that lie apart on it.",
      "12 run: What stands in this blank cannot be read. It takes a point.",
      "13 run: What stands in this blank cannot be read. It takes a list of points, curves and parts of curves.",
    ]
  `);
});
