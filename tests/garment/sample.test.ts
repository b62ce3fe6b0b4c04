import fc from 'fast-check';
import { expect, test } from 'vitest';
import { blockOf } from '../../src/garment/block.ts';
import { readFigure } from '../../src/garment/figure.ts';
import { type SampleGroup, sampleFigure } from '../../src/garment/sample.ts';
import { type SurveyGroup, survey, surveyMeasures } from '../../src/garment/survey.ts';

const groups: readonly SampleGroup[] = ['women', 'men', 'anyone'];

test('figures at fixed seeds are pinned', () => {
  expect(groups.map((group) => sampleFigure('first-set/Ana', group))).toMatchInlineSnapshot(`
    [
      {
        "back-waist": 441,
        "front-waist": 370,
        "neck-base": 346,
        "shoulder": 135,
        "shoulder-slope": 22.5,
      },
      {
        "back-waist": 483,
        "front-waist": 375,
        "neck-base": 434,
        "shoulder": 142,
        "shoulder-slope": 22.5,
      },
      {
        "back-waist": 466,
        "front-waist": 367,
        "neck-base": 451,
        "shoulder": 142,
        "shoulder-slope": 22.5,
      },
    ]
  `);
});

test('the same seed and group give the same figure, and a number is its digits', () => {
  fc.assert(
    fc.property(fc.integer(), fc.constantFrom(...groups), (seed, group) => {
      expect(sampleFigure(seed, group)).toEqual(sampleFigure(String(seed), group));
    }),
  );
});

test('another seed gives another figure', () => {
  const figures = Array.from({ length: 200 }, (_, seed) => JSON.stringify(sampleFigure(seed, 'anyone')));
  expect(new Set(figures).size).toBe(200);
});

test('every figure is read and drawn, in whole millimetres, within what the survey met', () => {
  fc.assert(
    fc.property(fc.string(), fc.constantFrom('women' as const, 'men' as const), (seed, group) => {
      const figure = sampleFigure(seed, group);
      expect(readFigure(figure).ok).toBe(true);
      expect(blockOf(figure).ok).toBe(true);
      for (const measure of surveyMeasures) {
        const { least, most } = survey[group].measures[measure];
        expect(Number.isInteger(figure[measure])).toBe(true);
        expect(figure[measure]).toBeGreaterThanOrEqual(least);
        expect(figure[measure]).toBeLessThanOrEqual(most);
      }
    }),
    { numRuns: 2000 },
  );
});

test.each(['women', 'men'] as const)('many %s have the survey’s means, deviations and correlations', (group) => {
  const count = 10_000;
  const rows = Array.from({ length: count }, (_, seed) => {
    const figure = sampleFigure(`many/${seed}`, group);
    return surveyMeasures.map((measure) => figure[measure]);
  });
  const { measures, correlation } = survey[group];
  const found = momentsOf(rows);
  surveyMeasures.forEach((measure, i) => {
    const { mean, deviation } = measures[measure];
    // Four standard errors of a mean, and 3 % for the deviation: drawing again beyond the extremes takes a little off it.
    expect(Math.abs((found.means[i] ?? 0) - mean), measure).toBeLessThan((4 * deviation) / Math.sqrt(count));
    expect(Math.abs((found.deviations[i] ?? 0) / deviation - 1), measure).toBeLessThan(0.03);
    surveyMeasures.forEach((_, j) => {
      expect(Math.abs((found.correlations[i]?.[j] ?? 0) - (correlation[i]?.[j] ?? 9))).toBeLessThan(0.04);
    });
  });
});

test('anyone is a woman or a man, about as often', () => {
  // A neck base of 400 mm parts nine in ten of each group.
  const girths = Array.from({ length: 2000 }, (_, seed) => sampleFigure(seed, 'anyone')['neck-base']);
  const wide = girths.filter((girth) => girth > 400).length / girths.length;
  const expected = shareAbove('women') / 2 + shareAbove('men') / 2;
  expect(Math.abs(wide - expected)).toBeLessThan(0.05);
});

/** The normal distribution's share above 400 mm, by Simpson's rule from 400 to eight deviations above the mean. */
function shareAbove(group: SurveyGroup): number {
  const { mean, deviation } = survey[group].measures['neck-base'];
  const density = (z: number): number => Math.exp((-z * z) / 2) / Math.sqrt(2 * Math.PI);
  const from = (400 - mean) / deviation;
  const step = (8 - from) / 1000;
  let sum = density(from) + density(8);
  for (let i = 1; i < 1000; i += 1) sum += (i % 2 === 1 ? 4 : 2) * density(from + i * step);
  return (sum * step) / 3;
}

function momentsOf(rows: readonly (readonly number[])[]) {
  const columns = surveyMeasures.map((_, i) => rows.map((row) => row[i] ?? Number.NaN));
  const means = columns.map((values) => values.reduce((sum, v) => sum + v, 0) / values.length);
  const covariance = (i: number, j: number): number =>
    rows.reduce((sum, row) => sum + ((row[i] ?? 0) - (means[i] ?? 0)) * ((row[j] ?? 0) - (means[j] ?? 0)), 0) /
    rows.length;
  const deviations = columns.map((_, i) => Math.sqrt(covariance(i, i)));
  const correlations = columns.map((_, i) =>
    columns.map((_, j) => covariance(i, j) / ((deviations[i] ?? 0) * (deviations[j] ?? 0))),
  );
  return { means, deviations, correlations };
}
