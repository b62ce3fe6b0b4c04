import fc from 'fast-check';
import { expect, test } from 'vitest';
import { blockOf } from '../../src/garment/block.ts';
import type { Figure } from '../../src/garment/figure.ts';
import { people } from '../../src/garment/people.ts';
import { say } from '../../src/words/say.ts';
import { measureBlock, unsquare } from './block-oracle.ts';
import { anyFigure } from './figures.ts';

const everyFigure = (check: (figure: Figure) => void): void => {
  for (const { figure } of people) check(figure);
  fc.assert(fc.property(anyFigure, check), { numRuns: 2000 });
};

test('the necklines together measure half the neck-base girth and its ease', () => {
  everyFigure((figure) => {
    expect(Math.abs(measureBlock(figure).half - (figure['neck-base'] + 15) / 2)).toBeLessThan(1e-6);
  });
});

test('each neckline is square to its centre line and to the shoulder', () => {
  everyFigure((figure) => {
    const { front, back, lines } = measureBlock(figure);
    expect(unsquare(front.derivative(0), lines('shoulder-line').direction)).toBeLessThan(1e-9);
    expect(unsquare(front.derivative(1), lines('centre-front').direction)).toBeLessThan(1e-9);
    expect(unsquare(back.derivative(0), lines('shoulder-line').direction)).toBeLessThan(1e-9);
    expect(unsquare(back.derivative(1), lines('centre-back').direction)).toBeLessThan(1e-9);
  });
});

test('the whole neckline runs on smoothly through the neck point, turning one way', () => {
  everyFigure((figure) => {
    const { front, back } = measureBlock(figure);
    const [a, b] = [front.derivative(0), back.derivative(0)];
    const cosine = (a.x * b.x + a.y * b.y) / (Math.hypot(a.x, a.y) * Math.hypot(b.x, b.y));
    expect(cosine).toBeCloseTo(-1, 12);
    expect(front.inflections()).toEqual([]);
    expect(back.inflections()).toEqual([]);
  });
});

test('points lie where the measures put them', () => {
  everyFigure((figure) => {
    const { points, front, back } = measureBlock(figure);
    const slope = (figure['shoulder-slope'] * Math.PI) / 180;
    const [neck, tip] = [points('neck-point'), points('shoulder-tip')];
    expect(points('front-neck-point')).toEqual({ x: 0, y: figure['front-waist'] });
    expect(neck.y - figure['front-waist']).toBeCloseTo(neck.x + 8, 9);
    expect(Math.hypot(tip.x - neck.x, tip.y - neck.y)).toBeCloseTo(figure.shoulder, 9);
    expect(Math.atan2(neck.y - tip.y, tip.x - neck.x)).toBeCloseTo(slope, 9);
    for (const [at, name] of [
      [front.get(0), 'neck-point'],
      [front.get(1), 'front-neck-point'],
      [back.get(0), 'neck-point'],
      [back.get(1), 'back-neck-point'],
    ] as const) {
      expect(Math.hypot(at.x - points(name).x, at.y - points(name).y)).toBeLessThan(1e-9);
    }
  });
});

test('the front neckline stays on the front, and no handle passes the corner', () => {
  everyFigure((figure) => {
    const { front, points } = measureBlock(figure);
    const box = front.bbox();
    expect(box.x.min).toBeGreaterThanOrEqual(-1e-9);
    expect(box.y.min).toBeGreaterThanOrEqual(figure['front-waist'] - 1e-9);
    expect(box.y.max).toBeLessThanOrEqual(points('neck-point').y + 1e-9);
  });
});

test('the back, laid on at the shoulder, is as wide as the front and 22 mm deep', () => {
  everyFigure((figure) => {
    const { points, lines } = measureBlock(figure);
    const [neck, backNeck] = [points('neck-point'), points('back-neck-point')];
    const { direction } = lines('centre-back');
    const away = { x: backNeck.x - neck.x, y: backNeck.y - neck.y };
    // Along the centre back from the level of the neck point, and square to it.
    expect(away.x * direction.x + away.y * direction.y).toBeCloseTo(22, 9);
    expect(Math.abs(away.x * direction.y - away.y * direction.x)).toBeCloseTo(neck.x, 9);
  });
});

test('with the shoulders joined the centre back turns from upright by twice the slope', () => {
  everyFigure((figure) => {
    const { direction } = measureBlock(figure).lines('centre-back');
    expect((Math.atan2(direction.x, direction.y) * 180) / Math.PI).toBeCloseTo(2 * figure['shoulder-slope'], 9);
  });
});

test('each neckline turns through a right angle less the slope', () => {
  everyFigure((figure) => {
    const { front, back } = measureBlock(figure);
    for (const neckline of [front, back]) {
      const [a, b] = [neckline.derivative(0), neckline.derivative(1)];
      const turn = Math.atan2(Math.abs(a.x * b.y - a.y * b.x), a.x * b.x + a.y * b.y);
      expect((turn * 180) / Math.PI).toBeCloseTo(90 - figure['shoulder-slope'], 9);
    }
  });
});

test('lines run up the front, to the right across it and from the neck point to the tip', () => {
  const { lines, points } = measureBlock(people[0]?.figure as Figure);
  expect(lines('centre-front')).toEqual({ through: { x: 0, y: 0 }, direction: { x: 0, y: 1 } });
  expect(lines('waist')).toEqual({ through: { x: 0, y: 0 }, direction: { x: 1, y: 0 } });
  expect(lines('collarbone-level')).toEqual({ through: points('front-neck-point'), direction: { x: 1, y: 0 } });
  expect(lines('shoulder-line').through).toEqual(points('neck-point'));
  expect(lines('shoulder-line').direction.x).toBeGreaterThan(0);
});

test('every object of the block is there, and nothing else', () => {
  const block = blockOf(people[0]?.figure as Figure);
  expect(block.ok && [...block.shapes].map(([name, shape]) => `${shape.kind} ${name}`)).toMatchInlineSnapshot(`
    [
      "line centre-front",
      "line waist",
      "line collarbone-level",
      "line shoulder-line",
      "point front-neck-point",
      "point neck-point",
      "point shoulder-tip",
      "curve front-neckline",
      "curve back-neckline",
      "point back-neck-point",
      "line centre-back",
    ]
  `);
});

test('a neck that no block fits is refused in words', () => {
  const block = blockOf({
    'neck-base': 40,
    shoulder: 135,
    'shoulder-slope': 40,
    'front-waist': 350,
    'back-waist': 420,
  });
  expect(block.ok ? null : say(block.message, { language: 'en', unit: 'cm' })).toMatchInlineSnapshot(
    `"No neck width gives half a neckline of 2.8 cm with a shoulder that slopes 40°. Check the neck-base girth and the shoulder slope."`,
  );
});

test('a slope of half a right angle or more is refused, not drawn inside out', () => {
  for (const slope of [45, 60, 90, 120]) {
    const figure = { 'neck-base': 370, shoulder: 135, 'shoulder-slope': slope, 'front-waist': 350, 'back-waist': 420 };
    expect(blockOf(figure).ok, `${slope} degrees`).toBe(false);
  }
});
