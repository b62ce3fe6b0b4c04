import { type Figure, measureRanges } from './figure.ts';
import { type Chance, chanceOf } from './seed.ts';
import { type SurveyGroup, type SurveyMeasure, survey, surveyMeasures } from './survey.ts';

export type SampleGroup = SurveyGroup | 'anyone';

/**
 * A plausible figure, always the same for the same seed and group: drawn from a normal distribution with the survey's
 * means, deviations and correlations, drawn again where a measure falls outside what the survey met, in whole mm.
 * The survey did not take the shoulder slope, so it is the one a block takes where none is given.
 */
export function sampleFigure(seed: string | number, group: SampleGroup): Figure {
  const chance = chanceOf(`${group}/${seed}`);
  const drawn = group === 'anyone' ? (chance.whole(0, 1) === 0 ? 'women' : 'men') : group;
  const lengths = drawLengths(drawn, chance);
  return { ...lengths, 'shoulder-slope': measureRanges['shoulder-slope'].otherwise ?? 22.5 };
}

function drawLengths(group: SurveyGroup, chance: Chance): Readonly<Record<SurveyMeasure, number>> {
  const { measures, cholesky } = survey[group];
  for (;;) {
    const deviates = surveyMeasures.map(() => chance.normal());
    const lengths = surveyMeasures.map((name, row) => {
      const together = (cholesky[row] ?? []).reduce((sum, weight, column) => sum + weight * (deviates[column] ?? 0), 0);
      return Math.round(measures[name].mean + measures[name].deviation * together);
    });
    const met = surveyMeasures.every((name, row) => {
      const length = lengths[row] ?? Number.NaN;
      return length >= measures[name].least && length <= measures[name].most;
    });
    if (met)
      return Object.fromEntries(surveyMeasures.map((name, row) => [name, lengths[row]])) as Record<
        SurveyMeasure,
        number
      >;
  }
}
