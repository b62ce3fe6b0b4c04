import { existsSync, readFileSync } from 'node:fs';
import { describe, expect, test } from 'vitest';
import { readBodies } from '../../src/cli/survey.ts';
import type { Figure } from '../../src/garment/figure.ts';
import { survey } from '../../src/garment/survey.ts';
import { measureBlock, unsquare } from '../garment/block-oracle.ts';

// C. C. Gordon et al., 2012 Anthropometric Survey of U.S. Army Personnel: Methods and Summary Statistics,
// NATICK/TR-15/007, 2014: the public data set. Mean, deviation; 5th, 50th and 95th percentile, mm.
describe('the project’s statistics are the survey’s', () => {
  test.each([
    ['women', 'neck-base', { mean: 371.2, deviation: 19.7, percentiles: [340, 370, 405] }],
    ['women', 'shoulder', { mean: 135.4, deviation: 10.3, percentiles: [120, 135, 153] }],
    ['women', 'back-waist', { mean: 425.4, deviation: 26.4, percentiles: [384, 425, 470] }],
    ['women', 'front-waist', { mean: 355.1, deviation: 23.9, percentiles: [317, 355, 396] }],
    ['men', 'neck-base', { mean: 434.6, deviation: 25.7, percentiles: [395, 433, 479] }],
    ['men', 'shoulder', { mean: 149.8, deviation: 10.5, percentiles: [133, 150, 167] }],
    ['men', 'back-waist', { mean: 477.6, deviation: 27.7, percentiles: [433, 477, 524] }],
    ['men', 'front-waist', { mean: 387.6, deviation: 29.3, percentiles: [342, 387, 438] }],
  ] as const)('%s, %s', (group, measure, { mean, deviation, percentiles }) => {
    const ours = survey[group].measures[measure];
    // As printed, to a tenth of a millimetre. Percentiles to 1 mm, the survey's unit: there are several conventions for
    // the value between two neighbours, and they choose different ones.
    expect(Math.abs(ours.mean - mean)).toBeLessThanOrEqual(0.05);
    expect(Math.abs(ours.deviation - deviation)).toBeLessThanOrEqual(0.05);
    const found = [ours.percentile5, ours.percentile50, ours.percentile95];
    percentiles.forEach((printed, i) => {
      expect(Math.abs((found[i] ?? Number.NaN) - printed)).toBeLessThanOrEqual(1);
    });
  });

  test('1,986 women and 4,082 men', () => {
    expect([survey.women.count, survey.men.count]).toEqual([1986, 4082]);
  });
});

const file = new URL('../../../shared/data/bodies.csv', import.meta.url);

describe.skipIf(!existsSync(file))('every measured body (skipped where ../shared/data/bodies.csv is absent)', () => {
  const lengthsOf = (body: ReadonlyMap<string, string>): Figure => ({
    'neck-base': Number(body.get('neck_base_girth_mm')),
    shoulder: Number(body.get('shoulder_length_mm')),
    'shoulder-slope': 22.5,
    'front-waist': Number(body.get('front_waist_length_mm')),
    'back-waist': Number(body.get('back_waist_length_mm')),
  });

  test('has a block whose necklines measure half the neck base and ease, square at all four ends', () => {
    const bodies = readBodies(readFileSync(file, 'utf8'));
    expect(bodies.length).toBe(6068);
    let [off, skew] = [0, 0];
    for (const body of bodies) {
      const figure = lengthsOf(body);
      const { half, front, back, lines } = measureBlock(figure);
      off = Math.max(off, Math.abs(half - (figure['neck-base'] + 15) / 2));
      skew = Math.max(
        skew,
        unsquare(front.derivative(0), lines('shoulder-line').direction),
        unsquare(front.derivative(1), lines('centre-front').direction),
        unsquare(back.derivative(0), lines('shoulder-line').direction),
        unsquare(back.derivative(1), lines('centre-back').direction),
      );
    }
    expect(off).toBeLessThan(1e-6);
    expect(skew).toBeLessThan(1e-9);
  });
});
