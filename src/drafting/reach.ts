import type { Cubic } from '../geometry/cubic.ts';
import type { Point } from '../geometry/point.ts';
import { type Message, message } from '../words/message.ts';
import { CURVE_PIECES, SHEET_REACH } from './limits.ts';
import type { Shape } from './shape.ts';

/** Why a shape cannot lie on the sheet (too far off, not a number, too many pieces); null when it can. */
export function whyOffSheet(shape: Shape): Message | null {
  switch (shape.kind) {
    case 'point':
      return within(shape.point) ? null : message('problem.off-sheet');
    case 'line':
      return within(shape.line.through) && within(shape.line.direction) ? null : message('problem.off-sheet');
    case 'length':
      return Math.abs(shape.length) <= SHEET_REACH ? null : message('problem.off-sheet');
    case 'curve':
      if (shape.path.length > CURVE_PIECES) return message('problem.too-many', { limit: CURVE_PIECES });
      return shape.path.every(cubicWithin) ? null : message('problem.off-sheet');
  }
}

// Written so that NaN is outside.
const within = (point: Point): boolean => Math.abs(point.x) <= SHEET_REACH && Math.abs(point.y) <= SHEET_REACH;

const cubicWithin = (cubic: Cubic): boolean =>
  within(cubic.p0) && within(cubic.p1) && within(cubic.p2) && within(cubic.p3);
