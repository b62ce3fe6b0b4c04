import { arcPath } from './arc.ts';
import { type Cubic, type Path, splitCubic, straight } from './cubic.ts';
import { arriving, leaving, turnBetween } from './direction.ts';
import { COINCIDENT, SMOOTH } from './epsilon.ts';
import { fitParallel } from './fit.ts';
import { forwardStretches } from './parallel.ts';
import { startingAt } from './path.ts';
import { add, distance, type Point, quarterTurn, scale } from './point.ts';
import { standstills } from './standstill.ts';
import { straightRun } from './straight.ts';
import { trimRuns } from './trim.ts';

/**
 * The parallel of the path at `d` mm, positive to the left of travel, run the same way. Fitted within FIT, with ends exact.
 * An outer corner turns as an arc about the corner, so the length is exact there: length + |d| x turn (Steiner 1840). At an
 * inner corner, and where the path is hollow tighter than d, the parallel is trimmed where it crosses itself. Where that
 * leaves several pieces apart, the longest is given. Null where nothing is left. A path that closes is treated as open.
 * A loose end has no parallel of its own, so nothing is cut about it: where a path crosses itself, or hooks round one of its ends
 * nearer than d, what is given may come nearer to the path than d. No seam of a pattern does either.
 */
export function offsetPath(path: Path, d: number): Path | null {
  if (!Number.isFinite(d)) return null;
  const sources = path.flatMap(smoothParts);
  if (sources.length === 0) return null;
  if (d === 0) return sources;
  return trimRuns(runsBeside(sources, d), path, d);
}

/** The parts of a piece between places where it stands still, handles too short to have a direction drawn in; none for a point. */
function smoothParts(c: Cubic): Cubic[] {
  if (!leaving(c)) return [];
  const parts: Cubic[] = [];
  let rest = c;
  let from = 0;
  for (const t of standstills(c)) {
    const [left, right] = splitCubic(rest, (t - from) / (1 - from));
    parts.push(left);
    rest = right;
    from = t;
  }
  return [...parts, rest].map((part) => evened(drawnIn(part))).filter((part) => leaving(part));
}

/** A straight run with its handles at the thirds, so that handles of next to no length cannot give it another direction. */
function evened(c: Cubic): Cubic {
  return straightRun(c) ? straight(c.p0, c.p3) : c;
}

function drawnIn(c: Cubic): Cubic {
  const p1 = distance(c.p0, c.p1) <= COINCIDENT ? c.p0 : c.p1;
  const p2 = distance(c.p2, c.p3) <= COINCIDENT ? c.p3 : c.p2;
  return p1 === c.p1 && p2 === c.p2 ? c : { ...c, p1, p2 };
}

/** The unbroken runs of the parallel: broken at inner corners and where the path is hollow too tight. */
function runsBeside(sources: readonly Cubic[], d: number): Path[] {
  const runs: Cubic[][] = [];
  let open: Cubic[] | null = null;
  let last: Cubic | null = null;
  for (const source of sources) {
    const corner: Cubic[] | null = open && last ? cornerBeside(last, source, d) : null;
    const run: Cubic[] | null = corner ? open : null;
    append(run ?? [], corner ?? []);
    open = addStretches(runs, run, source, d);
    last = source;
  }
  return runs.filter((pieces) => pieces.length > 0);
}

/** Adds the parallel of one piece, to the run that is open or in new ones; gives the run that is open after it, if one is. */
function addStretches(runs: Cubic[][], run: Cubic[] | null, source: Cubic, d: number): Cubic[] | null {
  const stretches = straightRun(source) ? [{ from: 0, to: 1 }] : forwardStretches(source, d);
  let open = run;
  let reached = 0;
  for (const { from, to } of stretches) {
    if (!open || from > reached) {
      open = [];
      runs.push(open);
    }
    append(open, pieceBeside(source, d, from, to));
    reached = to;
  }
  return reached === 1 ? open : null;
}

function pieceBeside(source: Cubic, d: number, from: number, to: number): Cubic[] {
  const line = straightRun(source);
  if (!line) return fitParallel(source, d, from, to);
  const aside = scale(quarterTurn(line.direction), d);
  return [straight(add(source.p0, aside), add(source.p3, aside))];
}

/** Adds pieces to a run; the first is drawn to the run's end, from which it is off by no more than COINCIDENT. */
function append(run: Cubic[], pieces: readonly Cubic[]): void {
  for (const piece of pieces) {
    const last = run.at(-1);
    run.push(last ? startingAt(piece, last.p3) : piece);
  }
}

/** The way round the corner between two pieces: an arc, nothing where it is smooth, null where an inner corner breaks the run. */
function cornerBeside(before: Cubic, after: Cubic, d: number): Cubic[] | null {
  const incoming = arriving(before);
  const outgoing = leaving(after);
  if (!incoming || !outgoing) return [];
  const turn = turnBetween(incoming, outgoing);
  if (Math.abs(turn * d) <= COINCIDENT) return [];
  // Straight back: an outer corner on both sides.
  if (Math.abs(turn) >= Math.PI - SMOOTH) return arcBeside(after.p0, incoming, d, -Math.PI * Math.sign(d));
  return turn * d > 0 ? null : arcBeside(after.p0, incoming, d, turn);
}

function arcBeside(corner: Point, incoming: Point, d: number, sweep: number): Cubic[] {
  const aside = scale(quarterTurn(incoming), Math.sign(d));
  return [...arcPath(corner, Math.abs(d), Math.atan2(aside.y, aside.x), sweep)];
}
