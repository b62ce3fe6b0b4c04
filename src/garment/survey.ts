import { surveyFigures } from './survey-figures.ts';

/** The figure measures the survey took, in the order of the correlation matrix. The shoulder slope is not among them. */
export const surveyMeasures = ['neck-base', 'shoulder', 'front-waist', 'back-waist'] as const;

export type SurveyMeasure = (typeof surveyMeasures)[number];

export type SurveyGroup = 'women' | 'men';

/** One measure in one group, mm. Percentiles by linear interpolation between the ordered values. */
export interface MeasureStatistics {
  readonly mean: number;
  readonly deviation: number;
  readonly least: number;
  readonly percentile1: number;
  readonly percentile5: number;
  readonly percentile50: number;
  readonly percentile95: number;
  readonly percentile99: number;
  readonly most: number;
}

export interface GroupStatistics {
  readonly count: number;
  readonly measures: Readonly<Record<SurveyMeasure, MeasureStatistics>>;
  /** Rows and columns in the order of `surveyMeasures`. */
  readonly correlation: readonly (readonly number[])[];
  /** The lower triangle L with L times its transpose equal to the correlation. */
  readonly cholesky: readonly (readonly number[])[];
}

/**
 * Statistics of 1,986 women and 4,082 men, computed from the public data set of C. C. Gordon et al., 2012
 * Anthropometric Survey of U.S. Army Personnel: Methods and Summary Statistics, NATICK/TR-15/007, 2014.
 * The survey took the front waist length sitting; see docs/method.md. `src/cli/survey.ts` computes them again.
 */
export const survey: Readonly<Record<SurveyGroup, GroupStatistics>> = surveyFigures;
