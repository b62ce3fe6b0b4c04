import { type Path, pointAt } from './cubic.ts';
import { COINCIDENT, SAME_CROSSING } from './epsilon.ts';
import { lengthOf } from './length.ts';
import { meetCubics } from './meet.ts';
import { feetOn } from './nearest.ts';
import { endOf, joinPaths, pieceAt, startOf } from './path.ts';
import { between, distance, type Point } from './point.ts';
import { type Place, pathBetween, pointAtStation } from './station.ts';

/**
 * The parallel left of raw runs: cut wherever runs cross, and rid of every cut that lies nearer to the source than `d`.
 * Cuts that follow on from each other are joined; the longest chain is given, null when none is left.
 */
export function trimRuns(runs: readonly Path[], source: Path, d: number): Path | null {
  const isClear = (p: Point) => insideDistance(source, p) >= Math.abs(d) - SAME_CROSSING;
  const only = runs[0];
  if (runs.length === 1 && only && probes(only).every(isClear)) return only;
  const kept = cutRuns(runs).filter(
    (cut) => middleOf(cut) && insideDistance(source, middleOf(cut) as Point) >= Math.abs(d) - SAME_CROSSING,
  );
  return longest(chains(kept));
}

/** Points to try along a run: the middle of each piece. */
function probes(run: Path): Point[] {
  return run.map((piece) => pointAt(piece, 0.5));
}

function middleOf(cut: Path): Point {
  return pointAtStation(cut, 0.5 * lengthOf(cut)) ?? startOf(cut);
}

/** Every run cut at every crossing with itself and the others. */
function cutRuns(runs: readonly Path[]): Path[] {
  const pieces = runs.flatMap((run, owner) => run.map((piece, index) => ({ owner, index, piece })));
  const places: Place[][] = runs.map(() => []);
  for (const [i, one] of pieces.entries()) {
    for (const other of pieces.slice(i + 1)) {
      const follows = other.owner === one.owner && other.index === one.index + 1;
      for (const { t, u } of meetCubics(one.piece, other.piece)) {
        if (follows && distance(pointAt(one.piece, t), one.piece.p3) <= SAME_CROSSING) continue;
        places[one.owner]?.push({ index: one.index, t });
        places[other.owner]?.push({ index: other.index, t: u });
      }
    }
  }
  return runs.flatMap((run, i) => cutAt(run, places[i] ?? []));
}

function cutAt(run: Path, places: readonly Place[]): Path[] {
  const ordered = places.toSorted((a, b) => a.index - b.index || a.t - b.t);
  const stops: Place[] = [{ index: 0, t: 0 }, ...ordered, { index: run.length - 1, t: 1 }];
  const cuts: Path[] = [];
  for (let i = 1; i < stops.length; i++) {
    const cut = pathBetween(run, stops[i - 1] as Place, stops[i] as Place);
    if (cut.length > 0 && lengthOf(cut) > COINCIDENT) cuts.push(cut);
  }
  return cuts;
}

const feet = new Float64Array(7);

/** The least distance from `p` to the source squarely or at a join: the two dead ends of the source do not count. */
function insideDistance(source: Path, p: Point): number {
  let least = Number.POSITIVE_INFINITY;
  for (const [i, piece] of source.entries()) {
    const count = feetOn(piece, p, feet);
    for (let k = 0; k < count; k++) least = Math.min(least, distance(pointAt(piece, feet[k] as number), p));
    if (i > 0) least = Math.min(least, distance(piece.p0, p));
  }
  return least;
}

/** Cuts that follow on from each other, joined. */
function chains(cuts: readonly Path[]): Path[] {
  const made: Path[] = [];
  for (const cut of cuts) {
    const last = made.at(-1);
    const joined = last && distance(endOf(last), startOf(cut)) <= SAME_CROSSING ? joinPaths(meeting(last, cut)) : null;
    if (joined) made[made.length - 1] = joined;
    else made.push(cut);
  }
  return made;
}

/** Two paths drawn to the point half way between the end of one and the start of the other. */
function meeting(before: Path, after: Path): [Path, Path] {
  const point = between(endOf(before), startOf(after), 0.5);
  const last = pieceAt(before, before.length - 1);
  const first = pieceAt(after, 0);
  return [
    [...before.slice(0, -1), { ...last, p3: point }],
    [{ ...first, p0: point }, ...after.slice(1)],
  ];
}

function longest(paths: readonly Path[]): Path | null {
  let found: Path | null = null;
  for (const path of paths) if (!found || lengthOf(path) > lengthOf(found)) found = path;
  return found;
}
