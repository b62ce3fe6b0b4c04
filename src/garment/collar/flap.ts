import { crossLineWithPath } from '../../geometry/crossings.ts';
import type { Path } from '../../geometry/cubic.ts';
import { COINCIDENT } from '../../geometry/epsilon.ts';
import { lengthOf } from '../../geometry/length.ts';
import { footOn, type Line, signedDistance, squareTo, stationOf } from '../../geometry/line.ts';
import { nearestOn } from '../../geometry/nearest.ts';
import { endOf, joinPaths, polyline, startOf } from '../../geometry/path.ts';
import type { Point } from '../../geometry/point.ts';
import { pieceBetween, pointAtStation } from '../../geometry/station.ts';

/** Cloth that turns over a fold line, as it lies flat. */
export interface Flap {
  /** Its free edge, from the fold line round. */
  readonly edge: Path;
  /** All round, closed along the fold line. */
  readonly outline: Path;
}

/**
 * The flap that a run goes round: as much of the run as lies left of the fold line, and, where `until` is given, on this
 * side (downward) of the square to the fold line through it. Of several stretches the longest. An edge that does not end
 * on the fold line is closed square to it. Null when nothing of the run lies there.
 */
export function flapOf(run: Path, fold: Line, until: Point | null = null): Flap | null {
  const limit = until && squareTo(fold, until);
  const cuts = stationsOf(run, limit ? [fold, limit] : [fold]);
  const turns = (p: Point): boolean =>
    signedDistance(fold, p) > 0 && (until === null || stationOf(fold, p) < stationOf(fold, until));
  const stretch = longest(stretches(run, cuts, turns));
  const edge = stretch && pieceBetween(run, ...stretch);
  if (!edge) return null;
  const [start, end] = [startOf(edge), endOf(edge)];
  const back = polyline([end, footOn(fold, end), footOn(fold, start), start]);
  const outline = back ? joinPaths([edge, back]) : edge;
  return outline && { edge, outline };
}

type Stretch = readonly [number, number];

/** The stations at which lines cut the run, its ends among them, in order. */
function stationsOf(run: Path, lines: readonly Line[]): readonly number[] {
  const crossed = lines.flatMap((line) => crossLineWithPath(line, run).map((p) => nearestOn(run, p).station));
  return [0, ...crossed, lengthOf(run)].toSorted((a, b) => a - b);
}

/** The stretches between cuts whose middle is wanted; neighbours are one. */
function stretches(run: Path, cuts: readonly number[], wanted: (p: Point) => boolean): readonly Stretch[] {
  const found: Stretch[] = [];
  for (const [index, to] of cuts.entries()) {
    const from = cuts[index - 1] ?? to;
    const middle = to - from > COINCIDENT ? pointAtStation(run, (from + to) / 2) : null;
    if (!middle || !wanted(middle)) continue;
    const last = found.at(-1);
    if (last && from - last[1] <= COINCIDENT) found[found.length - 1] = [last[0], to];
    else found.push([from, to]);
  }
  return found;
}

function longest(found: readonly Stretch[]): Stretch | null {
  return found.reduce<Stretch | null>((best, one) => (best && best[1] - best[0] >= one[1] - one[0] ? best : one), null);
}
