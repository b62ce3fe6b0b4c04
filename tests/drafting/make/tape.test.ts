import { expect, test } from 'vitest';
import { draft, problemsOf, taped } from '../block.ts';

const tape = (step: object) => taped(draft([{ verb: 'tape', name: 't', ...step }]), 't');

// Oracle: the neckline's length by brute force, 200,000 chords of the cubic written out.
function chords(t0: number, t1: number): number {
  const at = (t: number) => {
    const [a, b, c, d] = [(1 - t) ** 3, 3 * (1 - t) ** 2 * t, 3 * (1 - t) * t * t, t ** 3];
    return [b * 38 + c * 70 + d * 70, a * 320 + b * 320 + c * 356 + d * 400] as const;
  };
  let sum = 0;
  let [x, y] = at(t0);
  for (let i = 1; i <= 200_000; i++) {
    const [nextX, nextY] = at(t0 + ((t1 - t0) * i) / 200_000);
    sum += Math.hypot(nextX - x, nextY - y);
    [x, y] = [nextX, nextY];
  }
  return sum;
}

test('a whole curve', () => {
  expect(tape({ along: 'neckline' })).toBeCloseTo(chords(0, 1), 6);
});

test('a part of a curve, either way round', () => {
  const mark = { verb: 'pencil', name: 'half', at: [(3 * 38 + 4 * 70) / 8, (4 * 320 + 3 * 356 + 400) / 8] };
  const ends = [
    { verb: 'tape', name: 't', along: 'neckline', from: 'front-neck-point', to: 'half' },
    { verb: 'tape', name: 'u', along: 'neckline', from: 'half', to: 'front-neck-point' },
  ];
  const sheet = draft([mark, ...ends]);
  expect(taped(sheet, 't')).toBeCloseTo(chords(0, 0.5), 6);
  expect(taped(sheet, 'u')).toBeCloseTo(taped(sheet, 't'), 12);
});

test('along a line between the feet of two points, and straight between them', () => {
  expect(tape({ along: 'centre-front', from: 'front-neck-point', to: 'neck-point' })).toBeCloseTo(80, 12);
  expect(tape({ from: 'front-neck-point', to: 'neck-point' })).toBeCloseTo(Math.hypot(70, 80), 12);
});

test('a length taped is a measure for later steps', () => {
  const sheet = draft([
    { verb: 'tape', name: 'depth', along: 'centre-front', from: 'front-neck-point', to: 'neck-point' },
    { verb: 'parallel', name: 'level', to: 'waist', distance: 'depth / 2', side: 'up' },
  ]);
  expect(sheet.problems).toEqual([]);
  expect(sheet.measures.get('depth')).toEqual({ dimension: 'length', value: expect.closeTo(80, 12) });
  expect(sheet.shapes.get('level')).toMatchObject({ line: { through: { y: expect.closeTo(40, 12) } } });
});

test('set to a length worked out, which then has a name', () => {
  const sheet = draft([
    { verb: 'tape', name: 'width', length: 'stand + fall' },
    { verb: 'tape', name: 'arc', length: 'width * shoulder-slope' },
    { verb: 'tape', name: 'none', length: 'fall - 42 mm' },
  ]);
  expect(sheet.problems).toEqual([]);
  expect(taped(sheet, 'width')).toBeCloseTo(72, 12);
  // An arc is its radius times its angle in radians: 72 mm at 22.5 degrees.
  expect(taped(sheet, 'arc')).toBeCloseTo(9 * Math.PI, 12);
  expect(sheet.measures.get('arc')).toMatchObject({ dimension: 'length' });
  expect(taped(sheet, 'none')).toBe(0);
});

test('a tape cannot be set below nothing, nor to what is no length', () => {
  expect(
    problemsOf([
      { verb: 'tape', name: 't', length: 'stand - fall' },
      { verb: 'tape', name: 'u', length: 'stand / fall' },
      { verb: 'tape', name: 'v', length: 'shoulder-slope' },
    ]),
  ).toMatchInlineSnapshot(`
    [
      "1 length: The tape cannot be set to −1.2 cm: it measures from nothing upward. Exchange what is taken from what, or check the lengths.",
      "2 length: “stand / fall” is a bare number, and a length is wanted. Give it a unit: 6 mm, 0.6 cm or 1/4 in, for example.",
      "3 length: “shoulder-slope” is an angle, and a length is wanted here.",
    ]
  `);
});

test('a line without ends, or with one, cannot be taped', () => {
  expect(
    problemsOf([
      { verb: 'tape', name: 't', along: 'waist' },
      { verb: 'tape', name: 'u', along: 'neckline', to: 'neck-point' },
      { verb: 'tape', name: 'v', along: 'neckline', from: 'neck-point' },
    ]),
  ).toMatchInlineSnapshot(`
    [
      "1 from: waist is a line without ends. Say from which point to which point it is to be taken.",
      "2 from: One end is given and the other is not. Give both points, or neither to take the whole curve.",
      "3 to: One end is given and the other is not. Give both points, or neither to take the whole curve.",
    ]
  `);
});
