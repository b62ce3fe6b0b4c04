import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import { block, draft, lineOf, pathOf, pointOf, problemsOf, taped } from '../block.ts';

const near = (x: number, y: number) => ({ x: expect.closeTo(x, 6), y: expect.closeTo(y, 6) });
const mark = (steps: readonly unknown[]) => pointOf(draft(steps), 'm');
const slope = Math.PI / 8;

test('a mark by eye lies where it was made', () => {
  expect(mark([{ verb: 'pencil', name: 'm', at: [-25.5, 40] }])).toEqual({ x: -25.5, y: 40 });
});

describe('along a line', () => {
  const along = (more: object) =>
    mark([{ verb: 'along', name: 'm', on: 'shoulder-line', from: 'neck-point', ...more }]);

  test('a direction picks the sense that goes that way', () => {
    const out = near(70 + 30 * Math.cos(slope), 400 - 30 * Math.sin(slope));
    const past = near(70 - 30 * Math.cos(slope), 400 + 30 * Math.sin(slope));
    expect(along({ distance: 'stand', toward: 'right' })).toEqual(out);
    expect(along({ distance: 'stand', toward: 'down' })).toEqual(out);
    expect(along({ distance: 'stand', toward: 'left' })).toEqual(past);
    expect(along({ distance: '3 cm', toward: 'up' })).toEqual(past);
  });

  test('a point picks the sense toward it, wherever the point lies', () => {
    const out = near(70 + 30 * Math.cos(slope), 400 - 30 * Math.sin(slope));
    expect(along({ distance: 'stand', toward: 'shoulder-tip' })).toEqual(out);
    expect(along({ distance: '-stand', toward: 'front-neck-point' })).toEqual(out);
  });

  test('the distance is laid off from the foot of a point that is not on the line', () => {
    const steps = [
      { verb: 'pencil', name: 'off', at: [40, 12] },
      { verb: 'along', name: 'm', on: 'centre-front', from: 'off', distance: '10 mm', toward: 'up' },
    ];
    expect(mark(steps)).toEqual(near(0, 22));
  });
});

describe('along a curve', () => {
  const along = (from: string, distance: string, toward: string) => [
    { verb: 'along', name: 'm', on: 'neckline', from, distance, toward },
    { verb: 'tape', name: 'run', along: 'neckline', from, to: 'm' },
  ];

  test('a direction is judged where the curve is left', () => {
    expect(taped(draft(along('front-neck-point', '5 cm', 'right')), 'run')).toBeCloseTo(50, 6);
    expect(taped(draft(along('neck-point', '5 cm', 'down')), 'run')).toBeCloseTo(50, 6);
    // At the front neck point the curve leaves level: that it rises later does not count.
    expect(problemsOf(along('front-neck-point', '5 cm', 'up'))[0]).toMatchInlineSnapshot(
      `"1 toward: neckline does not run upward at all, so that does not say which way to go. Choose another direction, or a point to go toward."`,
    );
  });

  test('a point picks the sense by its place along the curve', () => {
    const there = pointOf(draft(along('front-neck-point', '5 cm', 'neck-point')), 'm');
    const back = taped(draft(along('neck-point', '5 cm', 'front-neck-point')), 'run');
    expect(there.x).toBeGreaterThan(0);
    expect(back).toBeCloseTo(50, 6);
  });

  test('the whole length reaches the end, and more is a problem that says what is left', () => {
    const whole = { verb: 'tape', name: 'whole', along: 'neckline' };
    const step = { verb: 'along', name: 'm', on: 'neckline', from: 'front-neck-point', toward: 'neck-point' };
    expect(pointOf(draft([whole, { ...step, distance: 'whole' }]), 'm')).toEqual(near(70, 400));
    expect(problemsOf([whole, { ...step, distance: 'whole + 0.1 mm' }])).toMatchInlineSnapshot(`
      [
        "2 distance: 11.8 cm runs off the end of neckline by a hair. Take the point at its end, or give a little less.",
      ]
    `);
    expect(problemsOf([whole, { ...step, distance: 'whole + 12 mm' }])).toMatchInlineSnapshot(`
      [
        "2 distance: 13 cm runs off the end of neckline, which has 11.8 cm left that way. Give less, or choose the other way.",
      ]
    `);
    expect(problemsOf([whole, { ...step, distance: '-5 cm' }])).toMatchInlineSnapshot(`
      [
        "2 distance: 5 cm runs off the end of neckline, which has 0 cm left that way. Give less, or choose the other way.",
      ]
    `);
  });
});

describe('where two cross', () => {
  test('two lines cross at one place', () => {
    const steps = [
      { verb: 'parallel', name: 'edge', to: 'centre-front', distance: 'overlap', side: 'left' },
      { verb: 'parallel', name: 'level', to: 'waist', distance: 'break-rise', side: 'up' },
      { verb: 'cross', name: 'm', one: 'edge', other: 'level' },
    ];
    expect(mark(steps)).toEqual(near(-25, 40));
  });

  test('a hint picks one of several: a direction, a point, a place', () => {
    // A circle-like wave: a level line through it twice.
    const wave = [
      { verb: 'pencil', name: 'a', at: [0, 0] },
      { verb: 'pencil', name: 'b', at: [50, 50] },
      { verb: 'pencil', name: 'c', at: [100, 0] },
      { verb: 'curve', name: 'wave', through: ['a', 'b', 'c'] },
      { verb: 'parallel', name: 'level', to: 'waist', distance: '20 mm', side: 'up' },
    ];
    const cross = { verb: 'cross', name: 'm', one: 'level', other: 'wave' };
    const x = (hint: object) => pointOf(draft([...wave, { ...cross, ...hint }]), 'm').x;
    expect(x({ near: 'left' })).toBeLessThan(50);
    expect(x({ near: 'right' })).toBeCloseTo(100 - x({ near: 'left' }), 6);
    expect(x({ near: 'a' })).toBe(x({ near: 'left' }));
    expect(x({ near: [99, 300] })).toBe(x({ near: 'right' }));
    expect(
      problemsOf([
        ...wave,
        cross,
        { ...cross, name: 'n', near: 'up' },
        { ...cross, name: 'o', near: 'b' },
        { ...cross, name: 'p', near: [50, 7] },
      ]),
    ).toMatchInlineSnapshot(`
      [
        "6 near: There are 2 such places. Say which one: a direction, or a point near it.",
        "7 near: Two such places lie equally far upward. Choose another direction, or a point near the one you mean.",
        "8 near: Two such places lie equally far from b. Choose a direction, or another point.",
        "9 near: Two such places lie equally far from there. Choose a direction, or a point.",
      ]
    `);
  });

  test('what does not cross is a problem that says why', () => {
    const steps = [
      { verb: 'parallel', name: 'edge', to: 'centre-front', distance: 'overlap', side: 'left' },
      { verb: 'cross', name: 'm', one: 'edge', other: 'centre-front' },
      { verb: 'cross', name: 'n', one: 'edge', other: 'neckline' },
      { verb: 'cross', name: 'o', one: 'edge', other: 'edge' },
    ];
    expect(problemsOf(steps)).toMatchInlineSnapshot(`
      [
        "2 other: edge and centre front run parallel, so they do not cross. Choose lines that lean toward each other.",
        "3 other: edge and neckline do not cross. A curve ends where it ends: lengthen it, or choose another.",
        "4 other: edge is named twice. Choose two different lines or curves.",
      ]
    `);
  });
});

describe('by compass', () => {
  const compass = (more: object) => ({ verb: 'compass', name: 'm', about: 'neck-point', on: 'centre-front', ...more });

  test('the mark is on the line, the radius away, on the side asked for (Pythagoras)', () => {
    fc.assert(
      fc.property(fc.double({ min: 70.001, max: 900, noNaN: true }), fc.boolean(), (radius, up) => {
        const found = mark([compass({ radius: `${radius.toFixed(6)} mm`, near: up ? 'up' : 'down' })]);
        const rise = Math.sqrt(Number(radius.toFixed(6)) ** 2 - 70 ** 2);
        expect(found.x).toBeCloseTo(0, 9);
        expect(found.y).toBeCloseTo(400 + (up ? rise : -rise), 6);
      }),
    );
  });

  test('a single cut needs no telling apart', () => {
    expect(mark([compass({ radius: '5 cm', on: 'neckline', near: 'up' })]).y).toBeLessThan(400);
  });

  test('an arc that does not reach, passes round, or has no radius is a problem', () => {
    expect(
      problemsOf([
        compass({ radius: '5 cm', near: 'up' }),
        compass({ name: 'l', radius: '69.6 mm', near: 'up' }),
        compass({ name: 'n', radius: '80 cm', on: 'neckline', near: 'up' }),
        compass({ name: 'o', radius: 'stand - fall', near: 'up' }),
      ]),
    ).toMatchInlineSnapshot(`
      [
        "1 radius: An arc of 5 cm about neck point does not cut centre front, which is 7 cm away at its nearest. Open the compass wider, or choose another line.",
        "2 radius: An arc of 7 cm about neck point misses centre front by a hair. Open the compass a little wider, or take the foot of the square from neck point.",
        "3 radius: An arc of 80 cm about neck point passes round neckline without cutting it. Close the compass a little, or choose another line.",
        "4 radius: A compass opened to −1.2 cm draws nothing. Give a radius greater than zero.",
      ]
    `);
  });
});

test('the foot of the square is where the line to it is square (dot product)', () => {
  const foot = mark([{ verb: 'foot', name: 'm', from: 'front-neck-point', on: 'shoulder-line' }]);
  const { through, direction } = lineOf(draft([]), 'shoulder-line');
  expect((foot.x - 0) * direction.x + (foot.y - 320) * direction.y).toBeCloseTo(0, 9);
  expect((foot.x - through.x) * direction.y - (foot.y - through.y) * direction.x).toBeCloseTo(0, 9);
});

test('a part of the way lies between the points, or beyond them', () => {
  const part = (fraction: string) =>
    mark([{ verb: 'part', name: 'm', from: 'front-neck-point', to: 'neck-point', fraction }]);
  expect(part('1/4')).toEqual(near(17.5, 340));
  expect(part('stand / fall')).toEqual(near(50, 320 + 80 * (30 / 42)));
  expect(part('-1')).toEqual(near(-70, 240));
});

test('marks on the neckline keep to it', () => {
  const path = pathOf(draft([]), 'neckline');
  expect(path).toBe((block.shapes.get('neckline') as { path: unknown }).path);
});
