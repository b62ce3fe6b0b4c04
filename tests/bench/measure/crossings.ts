import type { Bezier } from 'bezier-js';
import { crossPaths } from '../../../src/geometry/crossings.ts';
import type { Cubic } from '../../../src/geometry/cubic.ts';
import type { Point } from '../../../src/geometry/point.ts';
import { bezierOf, bruteDistance, paperOf, samples } from '../../geometry/oracle.ts';
import { type Contender, contest, type Outcome } from './contest.ts';

/** The accuracy promised of a crossing, mm: what the others are made to reach where they have a measure for it. */
const WANTED = 1e-6;

/** Straight runs by which the oracle counts crossings: curves of a pattern stand off such a run by no more than 1e-4 mm. */
const RUNS = 500;

export type Pair = readonly [Cubic, Cubic];

/** The pairs whose straight runs cross, as often as the oracle counts: a count that does not change with finer runs. */
export function crossingPairs(pairs: readonly Pair[]): readonly { readonly pair: Pair; readonly count: number }[] {
  return pairs.flatMap((pair) => {
    const [count, finer] = [RUNS, RUNS + 77].map((runs) => countRuns(pair, runs));
    return count !== undefined && count > 0 && count === finer ? [{ pair, count }] : [];
  });
}

function countRuns([a, b]: Pair, runs: number): number {
  const [one, other] = [samples([a], runs), samples([b], runs)];
  let count = 0;
  for (let i = 1; i < one.length; i += 1)
    for (let j = 1; j < other.length; j += 1)
      if (meet(one[i - 1] as Point, one[i] as Point, other[j - 1] as Point, other[j] as Point)) count += 1;
  return count;
}

function meet(a: Point, b: Point, c: Point, d: Point): boolean {
  const side = (p: Point, q: Point, r: Point): number => (q.x - p.x) * (r.y - p.y) - (q.y - p.y) * (r.x - p.x);
  return side(a, b, c) * side(a, b, d) < 0 && side(c, d, a) * side(c, d, b) < 0;
}

/** The crossings of pairs by this engine, by bezier-js and by paper. `missed` is how many pairs came out with another count than the oracle's. */
export function crossings(found: readonly { readonly pair: Pair; readonly count: number }[]): readonly Outcome[] {
  const paths = found.map(({ pair: [a, b] }) => [[a], [b]] as const);
  const beziers = found.map(({ pair: [a, b] }) => [bezierOf(a), bezierOf(b)] as const);
  const papers = found.map(({ pair: [a, b] }) => [curveOf(a), curveOf(b)] as const);
  const ours = (at: number): readonly Point[] => {
    const [a, b] = paths[at] as (typeof paths)[number];
    return crossPaths(a, b);
  };
  const byBezier =
    (threshold: number | undefined) =>
    (at: number): readonly Point[] => {
      const [a, b] = beziers[at] as readonly [Bezier, Bezier];
      return (a.intersects(b, threshold) as string[]).map((text) => a.get(Number(text.split('/')[0])));
    };
  const byPaper = (at: number): readonly Point[] => {
    const [a, b] = papers[at] as readonly [paper.Curve, paper.Curve];
    return a.getIntersections(b).map(({ point }) => point);
  };
  const contender = (by: string, how: string, run: (at: number) => readonly Point[]): Contender => {
    const points = found.map((_, at) => run(at));
    const off = points.flatMap((all, at) => all.map((p) => offBoth(p, (found[at] as { pair: Pair }).pair)));
    const missed = points.filter((all, at) => distinct(all) !== found[at]?.count).length;
    return { by, how, error: Math.max(0, ...off), missed, run };
  };
  return contest(
    [
      contender('gorgeline', 'as it is', ours),
      contender('bezier-js', 'as it is', byBezier(undefined)),
      contender('bezier-js', `to ${WANTED} mm`, byBezier(WANTED)),
      contender('paper', 'as it is', byPaper),
    ],
    found.length,
  );
}

function curveOf(c: Cubic): paper.Curve {
  return paperOf([c]).firstCurve;
}

function offBoth(p: Point, [a, b]: Pair): number {
  return Math.max(bruteDistance([a], p), bruteDistance([b], p));
}

/** How many of the points lie apart: one that is given over and over is one. */
function distinct(points: readonly Point[]): number {
  const kept: Point[] = [];
  for (const p of points) if (!kept.some((q) => Math.hypot(p.x - q.x, p.y - q.y) < 1)) kept.push(p);
  return kept.length;
}
