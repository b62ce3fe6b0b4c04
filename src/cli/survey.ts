import { readFileSync, writeFileSync } from 'node:fs';
import { argv, exit, stderr } from 'node:process';
import { pathToFileURL } from 'node:url';
import { CholeskyDecomposition, correlation, Matrix } from 'ml-matrix';
import {
  type GroupStatistics,
  type MeasureStatistics,
  type SurveyGroup,
  type SurveyMeasure,
  surveyMeasures,
} from '../garment/survey.ts';

/** The survey's column for each measure, mm. */
const columns: Readonly<Record<SurveyMeasure, string>> = {
  'neck-base': 'neck_base_girth_mm',
  shoulder: 'shoulder_length_mm',
  'front-waist': 'front_waist_length_mm',
  'back-waist': 'back_waist_length_mm',
};

/** The data set's rows as objects, column to text. The file has plain numbers and letters, no quoted commas. */
export function readBodies(csv: string): readonly ReadonlyMap<string, string>[] {
  const [head = '', ...rows] = csv.trim().split(/\r?\n/);
  const names = head.split(',');
  return rows.map((row) => {
    const cells = row.split(',');
    return new Map(names.map((name, i) => [name, cells[i] ?? '']));
  });
}

/** Means, deviations, percentiles and correlations of women and of men. */
export function statisticsOf(csv: string): Readonly<Record<SurveyGroup, GroupStatistics>> {
  const bodies = readBodies(csv);
  const groupOf = (sex: string): GroupStatistics => {
    const lengths = bodies
      .filter((body) => body.get('sex') === sex)
      .map((body) => surveyMeasures.map((measure) => Number(body.get(columns[measure]))));
    return groupStatistics(lengths);
  };
  return { women: groupOf('f'), men: groupOf('m') };
}

function groupStatistics(lengths: readonly (readonly number[])[]): GroupStatistics {
  const together = correlation(new Matrix(lengths.map((row) => [...row])));
  const lower = new CholeskyDecomposition(together).lowerTriangularMatrix;
  const measures = surveyMeasures.map((measure, i) => [
    measure,
    measureStatistics(lengths.map((row) => row[i] ?? Number.NaN)),
  ]);
  return {
    count: lengths.length,
    measures: Object.fromEntries(measures),
    correlation: rounded(together.to2DArray()),
    cholesky: rounded(lower.to2DArray()),
  };
}

function measureStatistics(values: readonly number[]): MeasureStatistics {
  const ordered = values.toSorted((a, b) => a - b);
  const mean = values.reduce((sum, value) => sum + value, 0) / values.length;
  const squares = values.reduce((sum, value) => sum + (value - mean) ** 2, 0);
  return {
    mean: round(mean, 3),
    deviation: round(Math.sqrt(squares / (values.length - 1)), 3),
    least: percentile(ordered, 0),
    percentile1: percentile(ordered, 1),
    percentile5: percentile(ordered, 5),
    percentile50: percentile(ordered, 50),
    percentile95: percentile(ordered, 95),
    percentile99: percentile(ordered, 99),
    most: percentile(ordered, 100),
  };
}

function percentile(ordered: readonly number[], percent: number): number {
  const place = ((ordered.length - 1) * percent) / 100;
  const below = ordered[Math.floor(place)] ?? Number.NaN;
  const above = ordered[Math.ceil(place)] ?? Number.NaN;
  return round(below + (above - below) * (place - Math.floor(place)), 2);
}

function round(value: number, places: number): number {
  return Number(value.toFixed(places));
}

function rounded(matrix: readonly (readonly number[])[]): number[][] {
  return matrix.map((row) => row.map((value) => round(value, 6)));
}

/**
 * `survey.ts BODIES.csv` writes src/garment/survey-figures.ts afresh. It writes the file itself, and not to standard output: a
 * shell would empty the file, which is read in here, before this begins.
 */
if (argv[1] && import.meta.url === pathToFileURL(argv[1]).href) {
  const [, , file] = argv;
  if (file === undefined) {
    stderr.write('Give the data set: npm exec -- node src/cli/survey.ts bodies.csv\n');
    exit(1);
  }
  const statistics = JSON.stringify(statisticsOf(readFileSync(file, 'utf8')), null, 2);
  const head = '/** Written by src/cli/survey.ts from the data set named in survey.ts; do not edit by hand. */';
  const written = new URL('../garment/survey-figures.ts', import.meta.url);
  writeFileSync(written, `${head}\nexport const surveyFigures = ${statistics};\n`);
}
