import type { Sheet } from '../../drafting/sheet.ts';
import { lineCalled, pointCalled } from '../../garment/collar/called.ts';
import type { RollReport } from '../../garment/collar/roll-report.ts';
import type { Path } from '../../geometry/cubic.ts';
import { lengthOf } from '../../geometry/length.ts';
import { nearestOn } from '../../geometry/nearest.ts';
import { offsetPath } from '../../geometry/offset.ts';
import { endOf, joinPaths, polyline, reversePath, startOf } from '../../geometry/path.ts';
import { add, scale } from '../../geometry/point.ts';
import { turnOf } from '../../geometry/smooth.ts';
import { pieceBetween } from '../../geometry/station.ts';
import { message } from '../../words/message.ts';
import type { Unit } from '../../words/unit.ts';
import type { Drawing, Label, Part } from '../drawing/drawing.ts';
import { boxOf, cloth, curve, dotsFor, nameOf, run, runBeside, wordsOf } from './parts.ts';
import { waveAbout } from './wave.ts';

const MARGIN = 22;
/** Stress lines: how many, and how far they reach on either side of the shoulder, mm. */
const STRESS = 4;
const REACH = 34;

/**
 * The outer edge turned down about the joined neck seam, from above: where it should lie, and where an edge of the drawn
 * length will. Too short, it lies nearer, by Steiner's relation; too long, it is drawn as a wave of its own length.
 */
export function rollDrawing(sheet: Sheet, report: RollReport, unit: Unit): Drawing {
  const { seam, verdict } = report;
  const right = besideSeam(seam, report.fall - report.stand);
  const lying = lyingEdge(report, right);
  const around = aroundNeck(sheet, seam);
  return {
    box: boxOf([seam, right, lying, ...around.paths], MARGIN),
    dots: dotsFor(unit),
    parts: [
      ...fallBetween(seam, lying),
      ...around.parts,
      curve('neck-seam', 'given', seam),
      ...(verdict === 'lies' ? [] : [curve('edge-right', 'right', right)]),
      ...(verdict === 'pulls' ? stressLines(report, seam) : []),
      curve('edge-drawn', 'made', lying),
    ],
    labels: [
      wordsOf('neck-seam', runBeside(seam, 0.7, 0.95), 'views.neck-seam', 'given'),
      ...edgeLabels(verdict, right, lying),
      ...around.labels,
    ],
    says: [message('views.roll-shows', { verdict })],
  };
}

/** The parallel of the seam on the garment, which is the outside of its bend. */
function besideSeam(seam: Path, distance: number): Path {
  const outside = turnOf(seam) < 0 ? 1 : -1;
  return offsetPath(seam, outside * Math.max(0, distance)) ?? seam;
}

function lyingEdge({ verdict, drawn, needed, settles, seam }: RollReport, right: Path): Path {
  if (verdict === 'ripples') return waveAbout(right, drawn - needed);
  return besideSeam(seam, settles.cover);
}

/** The fall that is seen, from the seam to the edge. */
function fallBetween(seam: Path, edge: Path): readonly Part[] {
  const [out, back] = [polyline([endOf(seam), endOf(edge)]), polyline([startOf(edge), startOf(seam)])];
  const outline = joinPaths([seam, ...(out ? [out] : []), reversePath(edge), ...(back ? [back] : [])]);
  return outline ? [cloth('fall', outline, 'right')] : [];
}

/** Lines across the shoulder, between where the edge lies and where it should. */
function stressLines({ fall, stand, settles, shoulder }: RollReport, seam: Path): readonly Part[] {
  const wanted = fall - stand;
  return Array.from({ length: STRESS }, (_, i) => {
    const beside = besideSeam(
      seam,
      Math.max(0, settles.cover) + ((wanted - Math.max(0, settles.cover)) * (i + 0.5)) / STRESS,
    );
    const { station } = nearestOn(beside, shoulder);
    const reach = REACH * (1 - (i % 2) * 0.3);
    return pieceBetween(beside, Math.max(0, station - reach), Math.min(lengthOf(beside), station + reach));
  }).flatMap((path, i) => (path ? [curve(`stress-${i + 1}`, 'red', path)] : []));
}

function edgeLabels(verdict: RollReport['verdict'], right: Path, lying: Path): readonly Label[] {
  if (verdict === 'lies') return [wordsOf('edge-drawn', runBeside(lying, 0.15, 0.45), 'views.edge-both', 'made')];
  return [
    wordsOf('edge-right', runBeside(right, 0.1, 0.4), 'views.edge-right', 'right'),
    wordsOf('edge-drawn', runBeside(lying, 0.6, 0.95), 'views.edge-drawn', 'made'),
  ];
}

/** The shoulder and the centre back, to find one's way by. */
function aroundNeck(sheet: Sheet, seam: Path) {
  const [neck, tip] = [pointCalled(sheet, 'neck-point'), pointCalled(sheet, 'shoulder-tip')];
  const back = lineCalled(sheet, 'centre-back');
  const shoulder =
    neck && tip ? ([neck, add(neck, scale({ x: tip.x - neck.x, y: tip.y - neck.y }, 0.55))] as const) : null;
  const centre = back ? ([startOf(seam), add(startOf(seam), scale(back.direction, 60))] as const) : null;
  const runs = [
    ...(shoulder ? [['shoulder-line', shoulder] as const] : []),
    ...(centre ? [['centre-back', centre] as const] : []),
  ];
  return {
    parts: runs.map(([name, [from, to]]): Part => run(name, 'given', from, to)),
    labels: runs.map(([name, by]): Label => nameOf(by, name, 'given')),
    paths: runs.flatMap(([, ends]) => polyline(ends) ?? []).map((piece): Path => [piece]),
  };
}
