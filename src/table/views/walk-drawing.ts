import type { Sheet } from '../../drafting/sheet.ts';
import { lineCalled, pathCalled, pointCalled } from '../../garment/collar/called.ts';
import { fromBack } from '../../garment/collar/collar-edges.ts';
import { type Moment, momentAt, placed, type Rolling } from '../../garment/collar/rolling.ts';
import { upwardCalled } from '../../garment/collar/upward.ts';
import type { Walk } from '../../garment/collar/walk.ts';
import type { Path } from '../../geometry/cubic.ts';
import { lengthOf } from '../../geometry/length.ts';
import { endOf, joinPaths, polyline, reversePath, startOf } from '../../geometry/path.ts';
import { add, scale } from '../../geometry/point.ts';
import { pieceBetween, pointAtStation } from '../../geometry/station.ts';
import { message } from '../../words/message.ts';
import type { Unit } from '../../words/unit.ts';
import type { Box } from '../drawing/box.ts';
import type { Drawing, Label, Part } from '../drawing/drawing.ts';
import { boxOf, cloth, curve, dotsFor, mark, nameAt, run } from './parts.ts';

const MARGIN = 14;
/** The box holds the collar wherever it comes by; it is looked at in so many moments. */
const LOOKS = 8;

/** The collar as it is moved: its neck edge, and all round where its other edges are drawn. */
export interface WalkedPiece {
  readonly neck: Path;
  readonly outline: Path | null;
}

/** The collar piece of a draft. */
export function pieceOf(sheet: Sheet, { collar }: Walk): WalkedPiece {
  const [drawn, roll] = [pathCalled(sheet, 'outer-edge'), upwardCalled(sheet, 'roll-line')];
  const outer = drawn && roll && fromBack(drawn, roll);
  const end = outer && polyline([endOf(collar), endOf(outer)]);
  const back = outer && polyline([startOf(outer), startOf(collar)]);
  const outline = outer && joinPaths([collar, ...(end ? [end] : []), reversePath(outer), ...(back ? [back] : [])]);
  return { neck: collar, outline };
}

/** The collar being walked along the neck seam, at a moment of it. The box holds still. */
export function walkDrawing(sheet: Sheet, walk: Walk, rolling: Rolling, moment: Moment, unit: Unit): Drawing {
  const piece = pieceOf(sheet, walk);
  const { placement, walked } = moment;
  const outline = piece.outline && placed(piece.outline, placement);
  const done = pieceBetween(walk.seam, 0, walked);
  return {
    box: walkBox(walk, rolling, piece),
    dots: dotsFor(unit),
    parts: [
      ...(outline ? [cloth('collar', outline, 'right')] : []),
      ...(done ? [curve('walked', 'cue', done)] : []),
      ...garment(sheet, walk),
      ...(outline ? [curve('collar-outline', 'help', outline)] : []),
      curve('collar-neck-edge', 'made', placed(piece.neck, placement)),
      ...marksOf(walk, moment),
    ],
    labels: labelsOf(walk),
    says: [message('views.walk-shows', { walked: { mm: walked }, of: { mm: lengthOf(walk.seam) } })],
  };
}

function walkBox({ seam }: Walk, rolling: Rolling, { neck, outline }: WalkedPiece): Box {
  const moments = Array.from({ length: LOOKS + 1 }, (_, i) => momentAt(rolling, i / LOOKS));
  return boxOf([seam, ...moments.map(({ placement }) => placed(outline ?? neck, placement))], MARGIN);
}

/** The garment's side: its seam, the shoulder and the centre back. */
function garment(sheet: Sheet, { seam }: Walk): readonly Part[] {
  const [neck, tip] = [pointCalled(sheet, 'neck-point'), pointCalled(sheet, 'shoulder-tip')];
  const back = lineCalled(sheet, 'centre-back');
  const foot = back && add(startOf(seam), scale(back.direction, 50));
  return [
    curve('neck-seam', 'given', seam),
    ...(neck && tip ? [run('shoulder-line', 'given', neck, tip)] : []),
    ...(foot ? [run('centre-back', 'given', startOf(seam), foot)] : []),
  ];
}

function marksOf({ seam, collar, marks }: Walk, { placement }: Moment): readonly Part[] {
  const laid = placed(collar, placement);
  return marks.flatMap((one): readonly Part[] => {
    const [on, at] = [pointAtStation(seam, one.seam), pointAtStation(laid, one.collar)];
    return [
      ...(on ? [mark(`${one.name}-seam`, 'given', on)] : []),
      ...(at ? [mark(`${one.name}-collar`, 'made', at)] : []),
    ];
  });
}

function labelsOf({ seam, marks }: Walk): readonly Label[] {
  return marks.flatMap(({ name, seam: station }) => {
    const at = pointAtStation(seam, station);
    return at ? [nameAt(at, name, 'given')] : [];
  });
}
