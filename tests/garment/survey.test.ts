import { existsSync, readFileSync } from 'node:fs';
import { expect, test } from 'vitest';
import { statisticsOf } from '../../src/cli/survey.ts';
import { survey, surveyMeasures } from '../../src/garment/survey.ts';

const bodies = new URL('../../../shared/data/bodies.csv', import.meta.url);

test.skipIf(!existsSync(bodies))(
  'the figures are those of the data set (skipped where ../shared/data/bodies.csv is absent)',
  () => {
    expect(statisticsOf(readFileSync(bodies, 'utf8'))).toEqual(survey);
  },
);

test.each(['women', 'men'] as const)('the triangle of %s times its transpose is the correlation', (group) => {
  const { cholesky, correlation } = survey[group];
  surveyMeasures.forEach((_, i) => {
    surveyMeasures.forEach((_, j) => {
      const product = surveyMeasures.reduce((sum, _, k) => sum + (cholesky[i]?.[k] ?? 0) * (cholesky[j]?.[k] ?? 0), 0);
      expect(product).toBeCloseTo(correlation[i]?.[j] ?? Number.NaN, 5);
    });
  });
});
