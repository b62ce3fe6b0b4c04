import { type Path, straight } from '../../geometry/cubic.ts';
import { COINCIDENT } from '../../geometry/epsilon.ts';
import { nearestOn } from '../../geometry/nearest.ts';
import { endOf, joinPaths, reversePath, startOf } from '../../geometry/path.ts';
import { distance, type Point } from '../../geometry/point.ts';
import { message, type Value } from '../../words/message.ts';
import { failed, made, type Outcome } from '../outcome.ts';
import type { CurveShape } from '../shape.ts';
import type { Given, RunPiece } from '../taken.ts';
import { HAIR } from './hair.ts';

/**
 * Lines and curves joined end to end in the order of the run. Each curve is turned so that it comes in at its nearer
 * end; two points in a row are joined by a straight run; a curve must meet what stands beside it.
 */
export function makeSeam({ run }: Given<'seam'>): Outcome<CurveShape> {
  const paths: Path[] = [];
  let last: RunPiece | null = null;
  for (let index = 0; index < run.length; index++) {
    const next = inOrder(run[index] as RunPiece, last, run[index + 1]);
    const join = last === null ? made(null) : joinOf(last, next);
    if (!join.ok) return join;
    if (join.value) paths.push(join.value);
    if (next.kind === 'path') paths.push(next.path);
    last = next;
  }
  // Is there any length in it?
  const path = paths.length === 0 ? null : joinPaths(paths);
  return path ? made({ kind: 'curve', path }) : failed('run', message('problem.seam-empty'));
}

/** The straight run between two points; null where two pieces meet. Pieces that ought to meet and do not are a problem. */
function joinOf(last: RunPiece, next: RunPiece): Outcome<Path | null> {
  const [end, start] = [endPoint(last), startPoint(next)];
  const gap = distance(end, start);
  if (gap <= COINCIDENT) return made(null);
  if (last.kind === 'point' && next.kind === 'point') return made([straight(end, start)]);
  const values = { one: { named: last.name }, other: { named: next.name } };
  if (gap < HAIR) return failed('run', message('problem.seam-gap-hair', values));
  const midway = midwayOn(last, next);
  if (midway) return failed('run', message('problem.seam-midway', midway));
  return failed('run', message('problem.seam-gap', { ...values, gap: { mm: gap } }));
}

/** The point that lies on the curve beside it in the run, but not at its end; null where none does. */
function midwayOn(last: RunPiece, next: RunPiece): { readonly mark: Value; readonly along: Value } | null {
  const [point, path] = last.kind === 'point' ? [last, next] : [next, last];
  if (point.kind !== 'point' || path.kind !== 'path') return null;
  const { distance: away } = nearestOn(path.path, point.point);
  return away < HAIR ? { mark: { named: point.name }, along: { named: path.name } } : null;
}

const startPoint = (piece: RunPiece): Point => (piece.kind === 'point' ? piece.point : startOf(piece.path));
const endPoint = (piece: RunPiece): Point => (piece.kind === 'point' ? piece.point : endOf(piece.path));

/** The piece turned to begin at its end nearer to where the run stands; the first one, to end nearer to what follows. */
function inOrder(piece: RunPiece, last: RunPiece | null, next: RunPiece | undefined): RunPiece {
  if (piece.kind === 'point') return piece;
  const goal = last ? [endPoint(last)] : next ? [startPoint(next), endPoint(next)] : [];
  const away = (from: Point): number => Math.min(...goal.map((point) => distance(from, point)));
  const [start, end] = [away(startPoint(piece)), away(endPoint(piece))];
  const backward = last ? end < start : start < end;
  return backward ? { ...piece, path: reversePath(piece.path) } : piece;
}
