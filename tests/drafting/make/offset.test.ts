import { describe, expect, test } from 'vitest';
import { draft, pathOf, problemsOf, taped } from '../block.ts';

const corner = [
  { verb: 'pencil', name: 'a', at: [0, 0] },
  { verb: 'pencil', name: 'b', at: [100, 0] },
  { verb: 'pencil', name: 'c', at: [110, 80] },
  { verb: 'seam', name: 'bend', run: ['a', 'b', 'c'] },
];
const beside = (of: string, side: string, distance: string, ...before: readonly unknown[]) =>
  draft([
    ...before,
    { verb: 'offset', name: 'o', of, distance, side },
    { verb: 'tape', name: 'own', along: of },
    { verb: 'tape', name: 'length', along: 'o' },
  ]);
const gain = (sheet: ReturnType<typeof beside>) => taped(sheet, 'length') - taped(sheet, 'own');

describe('the parallel of a curve', () => {
  // Steiner 1840: outside, a parallel is longer by the distance times the angle turned through; inside, shorter by it.
  // The neckline turns through a right angle.
  test('differs in length by the distance times the turn, on either side', () => {
    expect(gain(beside('neckline', 'down', '12 mm'))).toBeCloseTo((12 * Math.PI) / 2, 4);
    expect(gain(beside('neckline', 'left', '12 mm'))).toBeCloseTo((-12 * Math.PI) / 2, 4);
    expect(gain(beside('neckline', 'left', '-12 mm'))).toBeCloseTo((12 * Math.PI) / 2, 4);
  });

  test('goes round an outer corner as an arc and is trimmed at an inner one', () => {
    const turn = Math.atan2(80, 10);
    expect(gain(beside('bend', 'down', '10 mm', ...corner))).toBeCloseTo(10 * turn, 6);
    // Inside, each side of a corner loses the distance times the tangent of half its turn.
    expect(gain(beside('bend', 'up', '10 mm', ...corner))).toBeCloseTo(-20 * Math.tan(turn / 2), 6);
  });

  test('lies on the side of a point, even straight out from a corner', () => {
    const outside = { verb: 'pencil', name: 'out', at: [120, -30] };
    const inside = { verb: 'pencil', name: 'in-there', at: [40, 40] };
    expect(gain(beside('bend', 'out', '10 mm', ...corner, outside))).toBeGreaterThan(0);
    expect(gain(beside('bend', 'in-there', '10 mm', ...corner, inside))).toBeLessThan(0);
  });

  test('takes the outside of a corner that all but turns back, whichever of its arms the point is over', () => {
    const marks = [
      { verb: 'pencil', name: 'a', at: [0, 0] },
      { verb: 'pencil', name: 'b', at: [100, 0] },
      { verb: 'pencil', name: 'c', at: [20, 30] },
      { verb: 'seam', name: 'spike', run: ['a', 'b', 'c'] },
    ];
    for (const at of [
      [110, -40],
      [130, 30],
      [110, 8],
    ]) {
      const over = { verb: 'pencil', name: 'over', at };
      expect(gain(beside('spike', 'over', '4 mm', ...marks, over))).toBeCloseTo(4 * (Math.PI - Math.atan2(30, 80)), 6);
    }
  });

  test('at no distance is the curve itself', () => {
    const sheet = beside('neckline', 'up', 'stand - 3 cm');
    expect(pathOf(sheet, 'o')).toBe(pathOf(sheet, 'neckline'));
  });
});

test('a side that cannot be told, or a distance too great, is a problem', () => {
  const offset = { verb: 'offset', of: 'neckline' };
  const level = { verb: 'curve', name: 'level', through: ['a', 'b'] };
  const past = { verb: 'pencil', name: 'past', at: [150, 0] };
  expect(
    problemsOf([
      ...corner,
      level,
      past,
      { ...offset, name: 'o1', of: 'level', distance: '1 cm', side: 'right' },
      { ...offset, name: 'o2', distance: '1 cm', side: 'neck-point' },
      { ...offset, name: 'o3', of: 'level', distance: '1 cm', side: 'past' },
      { ...offset, name: 'o4', distance: '50 cm', side: 'left' },
      { ...offset, name: 'o5', of: 'waist', distance: '1 cm', side: 'left' },
    ]),
  ).toMatchInlineSnapshot(`
    [
      "7 side: level has no side that lies to the right: it runs that way itself. Choose another direction, a point on the side you mean, or another line.",
      "8 side: neck point lies on neckline itself, so it does not say which side. Choose a point to one side, or a direction.",
      "9 side: past lies straight beyond the end of level, so it does not say which side. Choose a point to one side, or a direction.",
      "10 distance: No curve runs parallel to neckline at 50 cm on that side: the curve is hollower than that. Give less, or take the other side.",
      "11 of: waist is a line, and a curve is wanted here.",
    ]
  `);
});
