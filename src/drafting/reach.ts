import type { Cubic } from '../geometry/cubic.ts';
import type { Point } from '../geometry/point.ts';
import { type Message, message } from '../words/message.ts';
import { AMOUNT_REACH, CURVE_PIECES, SHEET_REACH } from './limits.ts';
import type { Shape } from './shape.ts';

/** Why a shape cannot lie on the sheet (too far off, not a number, too many pieces); null when it can. */
export function whyOffSheet(shape: Shape): Message | null {
  if (shape.kind === 'curve' && shape.path.length > CURVE_PIECES)
    return message('problem.too-many', { limit: CURVE_PIECES });
  return isWithin(shape) ? null : message('problem.off-sheet');
}

function isWithin(shape: Shape): boolean {
  switch (shape.kind) {
    case 'point':
      return within(shape.point);
    case 'line':
      return within(shape.line.through) && within(shape.line.direction);
    case 'length':
      return Math.abs(shape.length) <= SHEET_REACH;
    case 'angle':
      return Math.abs(shape.angle) <= AMOUNT_REACH;
    case 'curve':
      return shape.path.every(cubicWithin);
  }
}

// Written so that NaN is outside.
const within = (point: Point): boolean => Math.abs(point.x) <= SHEET_REACH && Math.abs(point.y) <= SHEET_REACH;

const cubicWithin = (cubic: Cubic): boolean =>
  within(cubic.p0) && within(cubic.p1) && within(cubic.p2) && within(cubic.p3);
