import { expect, test } from 'vitest';
import { blockOf } from '../../src/garment/block.ts';
import { people, personNamed } from '../../src/garment/people.ts';
import { survey, surveyMeasures } from '../../src/garment/survey.ts';

test('there are at least eight, women and men, each with a name and a note of its own', () => {
  expect(people.length).toBeGreaterThanOrEqual(8);
  for (const field of ['id', 'name', 'note'] as const) {
    expect(new Set(people.map((one) => one[field])).size).toBe(people.length);
  }
  expect(new Set(people.map((one) => one.group))).toEqual(new Set(['women', 'men']));
});

test.each(people)('$name lies between the 1st and the 99th percentile in every measure', ({ figure, group }) => {
  for (const measure of surveyMeasures) {
    const { percentile1, percentile99 } = survey[group].measures[measure];
    expect(figure[measure], measure).toBeGreaterThanOrEqual(percentile1);
    expect(figure[measure], measure).toBeLessThanOrEqual(percentile99);
  }
});

test.each(people)('$name is no stranger: the measures go together as the survey’s do', ({ figure, group }) => {
  // Solve L u = z by substitution: the squared length of u is Mahalanobis's distance. 13.28 is the 99th percentile of
  // chi-square with four degrees of freedom (any table).
  const { measures, cholesky } = survey[group];
  const deviates: number[] = [];
  surveyMeasures.forEach((measure, row) => {
    const z = (figure[measure] - measures[measure].mean) / measures[measure].deviation;
    const lower = cholesky[row] ?? [];
    const known = deviates.reduce((sum, u, column) => sum + (lower[column] ?? 0) * u, 0);
    deviates.push((z - known) / (lower[row] ?? Number.NaN));
  });
  expect(deviates.reduce((sum, u) => sum + u * u, 0)).toBeLessThan(13.28);
});

test('together they cover the range: each measure spans half of what the survey met in nine of ten', () => {
  for (const group of ['women', 'men'] as const) {
    const members = people.filter((one) => one.group === group);
    for (const measure of surveyMeasures) {
      const found = members.map((one) => one.figure[measure]);
      const { percentile5, percentile95 } = survey[group].measures[measure];
      expect(Math.max(...found) - Math.min(...found), `${group} ${measure}`).toBeGreaterThan(
        (percentile95 - percentile5) / 2,
      );
    }
  }
  const slopes = people.map((one) => one.figure['shoulder-slope']);
  expect(Math.min(...slopes)).toBeLessThan(18);
  expect(Math.max(...slopes)).toBeGreaterThan(27);
});

test('each has a block', () => {
  expect(people.filter((one) => !blockOf(one.figure).ok)).toEqual([]);
});

test('they are found by id', () => {
  expect(personNamed('amara')).toBe(people[0]);
  expect(personNamed('nobody')).toBeNull();
});
