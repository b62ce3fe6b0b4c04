import type { Bezier } from 'bezier-js';
import paper from 'paper/dist/paper-core';
import type { Cubic } from '../../../src/geometry/cubic.ts';
import { lengthOf } from '../../../src/geometry/length.ts';
import { bezierOf, chordLength } from '../../geometry/oracle.ts';
import { type Contender, contest, type Outcome } from './contest.ts';

/** The accuracy promised of a length, mm. */
const WANTED = 1e-7;

/** No finer accuracy is asked of anybody, mm: the oracle would not know. */
const LEAST = 2e-10;

/** Runs of chords for the oracle: what is left of its error is rounding, some 1e-11 mm. */
const CHORDS = 8192;

/** What paper does with a curve given as eight numbers, and keeps nothing: of a curve of its own it remembers the length. */
const onValues = paper.Curve as unknown as {
  getLength(values: readonly number[]): number;
  getPart(values: readonly number[], from: number, to: number): readonly number[];
};

/** The lengths of curves by this engine, by bezier-js and by paper: as they are, and cut into so many parts that they are as right as is promised, and as right as this engine is. */
export function lengths(curves: readonly Cubic[]): readonly Outcome[] {
  const truth = curves.map((c) => chordLength([c], CHORDS));
  const worst = (measure: (at: number) => number): number =>
    Math.max(...curves.map((_, at) => Math.abs(measure(at) - (truth[at] ?? Number.NaN))));
  const beziers = curves.map((c) => bezierOf(c));
  const values = curves.map(({ p0, p1, p2, p3 }) => [p0, p1, p2, p3].flatMap(({ x, y }) => [x, y]));
  const cutBeziers = (parts: number): readonly (readonly Bezier[])[] =>
    beziers.map((b) => steps(parts).map(([from, to]) => b.split(from, to)));
  const byBezier = (cut: readonly (readonly Bezier[])[]) => (at: number) =>
    (cut[at] ?? []).reduce((sum, b) => sum + b.length(), 0);
  const cutPapers = (parts: number): readonly (readonly (readonly number[])[])[] =>
    values.map((one) => steps(parts).map(([from, to]) => onValues.getPart(one, from, to)));
  const byPaper = (cut: readonly (readonly (readonly number[])[])[]) => (at: number) =>
    (cut[at] ?? []).reduce((sum, one) => sum + onValues.getLength(one), 0);
  const ours = (at: number): number => lengthOf([curves[at] as Cubic]);
  const reached = Math.max(worst(ours), LEAST);
  const cuts = (isRight: (parts: number, most: number) => boolean): readonly number[] => [
    ...new Set([1, ...[WANTED, reached].map((most) => fewest((parts) => isRight(parts, most)))]),
  ];
  const bezierCuts = cuts((parts, most) => worst(byBezier(cutBeziers(parts))) <= most);
  const paperCuts = cuts((parts, most) => worst(byPaper(cutPapers(parts))) <= most);
  const contenders: readonly Contender[] = [
    { by: 'gorgeline', how: 'as it is', error: worst(ours), run: ours },
    ...bezierCuts.map((parts) => {
      const run = byBezier(cutBeziers(parts));
      return { by: 'bezier-js', how: asCut(parts), error: worst(run), run };
    }),
    ...paperCuts.map((parts) => {
      const run = byPaper(cutPapers(parts));
      return { by: 'paper', how: asCut(parts), error: worst(run), run };
    }),
  ];
  return contest(contenders, curves.length);
}

function asCut(parts: number): string {
  return parts === 1 ? 'as it is' : `cut into ${parts} parts`;
}

/** The fewest parts, a power of two, with which it is right enough. */
function fewest(isRight: (parts: number) => boolean): number {
  for (let parts = 1; parts <= 64; parts *= 2) if (isRight(parts)) return parts;
  return 128;
}

function steps(parts: number): readonly (readonly [number, number])[] {
  return Array.from({ length: parts }, (_, at) => [at / parts, (at + 1) / parts] as const);
}
