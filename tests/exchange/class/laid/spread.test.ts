import fc from 'fast-check';
import { describe, expect, test } from 'vitest';
import type { Footing } from '../../../../src/exchange/class/laid/footing.ts';
import { median, middleOf } from '../../../../src/exchange/class/laid/middle.ts';
import { spreadOf } from '../../../../src/exchange/class/laid/spread.ts';
import type { Stray } from '../../../../src/exchange/class/laid/stray.ts';
import { type Figure, figureMeasures } from '../../../../src/garment/figure.ts';
import { sampleFigure } from '../../../../src/garment/sample.ts';

/** A mark made on an upright line: along is up, across is to the left. */
const mark: Footing = {
  kind: 'point',
  right: { kind: 'point', point: { x: 10, y: 20 } },
  spots: [{ at: { x: 10, y: 20 }, along: { x: 0, y: 1 }, name: 'break-point' }],
};
const off = (along: number, across: number): Stray => ({ kind: 'point', offs: [{ along, across }] });

describe('the spread of a class', () => {
  test('says how far off half of them lie, how far the furthest, and which way the middle of the class leans', () => {
    const spread = spreadOf([off(0, 0), off(2, 0), off(2, 0), off(3, 4), off(20, 0)], mark);
    expect(spread).toMatchObject({ half: 2, furthest: 20, at: null });
    expect(spread?.lean.x).toBeCloseTo(0, 12);
    expect(spread?.lean.y).toBeCloseTo(2, 12);
  });

  test('says no distance at which nobody lies, where half of the class is right and half far off', () => {
    const spread = spreadOf([off(0, 0), off(0.2, 0), off(20, 0), off(21, 0)], mark);
    expect(spread).toMatchObject({ nearest: 0, half: 0.2, furthest: 21 });
    expect(spread?.lean.y).toBeCloseTo(0.2, 12);
    expect(spreadOf([off(-20, 0), off(-20, 0), off(0, 0)], mark)).toMatchObject({ half: 20, lean: { y: -20 } });
  });

  test('leans where the middle of the class is furthest off', () => {
    const edge: Footing = {
      ...mark,
      kind: 'line',
      spots: [
        { at: { x: 0, y: 0 }, along: { x: 0, y: 1 }, name: 'low' },
        { at: { x: 0, y: 300 }, along: { x: 0, y: 1 }, name: 'high' },
      ],
    };
    const leaning = (top: number): Stray => ({
      kind: 'line',
      offs: [
        { along: 0, across: 1 },
        { along: 0, across: top },
      ],
    });
    expect(spreadOf([leaning(1), leaning(1.2)], edge)?.at).toBeNull();
    const spread = spreadOf([leaning(5), leaning(6), leaning(7)], edge);
    expect(spread?.at?.name).toBe('high');
    expect(spread?.lean.x).toBeCloseTo(-6, 12);
  });

  test('of nobody is nothing', () => {
    expect(spreadOf([], mark)).toBeNull();
  });
});

describe('the figure in the middle', () => {
  const figure = (change: Partial<Figure>): Figure => ({ ...sampleFigure('one', 'women'), ...change });

  test('is the one of the class that differs least from its median', () => {
    const work = [300, 350, 340, 420, 500].map((neck) => ({ figure: figure({ 'neck-base': neck }) }));
    expect(middleOf(work)?.figure['neck-base']).toBe(350);
  });

  test('is one of theirs, the same in whatever order they come', () => {
    fc.assert(
      fc.property(fc.uniqueArray(fc.integer({ min: 0, max: 999 }), { minLength: 1, maxLength: 20 }), (seeds) => {
        const work = seeds.map((seed) => ({ figure: sampleFigure(seed, 'anyone') }));
        const middle = middleOf(work);
        expect(work).toContain(middle);
        const far = (one: Figure): number =>
          figureMeasures.reduce((sum, measure) => {
            const values = work.map((other) => other.figure[measure]);
            const range = Math.max(...values) - Math.min(...values);
            return sum + (range > 0 ? Math.abs(one[measure] - median(values)) / range : 0);
          }, 0);
        const again = middleOf(work.toReversed());
        expect(far(middle?.figure as Figure)).toBeCloseTo(far(again?.figure as Figure), 12);
        for (const one of work) expect(far(middle?.figure as Figure)).toBeLessThanOrEqual(far(one.figure) + 1e-12);
      }),
      { numRuns: 50 },
    );
  });

  test('of no figures is none', () => {
    expect(middleOf([])).toBeNull();
    expect(median([])).toBe(0);
  });
});
