import type { Shape } from '../drafting/shape.ts';
import type { Name } from '../drafting/step.ts';
import type { Path } from '../geometry/cubic.ts';
import type { Line } from '../geometry/line.ts';
import { add, heading, type Point, point, scale } from '../geometry/point.ts';
import { mirrorLine, mirrorPath, mirrorPoint, shiftPath } from '../geometry/transform.ts';
import { type Message, message } from '../words/message.ts';
import type { Figure } from './figure.ts';
import { solveNecklines } from './neckline.ts';
import { blockRules } from './rules.ts';

export type Block =
  | { readonly ok: true; readonly shapes: ReadonlyMap<Name, Shape> }
  | { readonly ok: false; readonly message: Message };

const RIGHT = point(1, 0);
const UP = point(0, 1);
const DOWN = point(0, -1);

/** The lines of the block. Each begins where it is drawn through, and runs over the body from there. */
export const blockLines: ReadonlySet<Name> = new Set([
  'centre-front',
  'waist',
  'collarbone-level',
  'shoulder-line',
  'centre-back',
]);

/**
 * The block of a figure, in the frame of the sheet: origin where the centre front crosses the waist, mm, front piece to
 * the right. The back lies on with the shoulder seams joined: drafted with its neck point and shoulder on the front's,
 * then mirrored over the shoulder line. `centre-back` runs from the back neck point away from the neck.
 */
export function blockOf(figure: Figure): Block {
  const slope = (figure['shoulder-slope'] * Math.PI) / 180;
  const half = (figure['neck-base'] + blockRules.neckEase) / 2;
  const necklines = solveNecklines(half, slope);
  // Is there a neck width for this girth and slope?
  if (!necklines)
    return { ok: false, message: message('garment.no-neck-width', { half: { mm: half }, slope: { radians: slope } }) };

  const frontNeck = point(0, figure['front-waist']);
  const neck = point(necklines.width, frontNeck.y + necklines.width + blockRules.frontNeckDeeperThanWide);
  const shoulder: Line = { through: neck, direction: heading(-slope) };
  const toNeckLevel = point(0, neck.y);
  const flatBackNeck = point(0, neck.y - blockRules.backNeckDepth);
  const backNeck = mirrorPoint(flatBackNeck, shoulder);
  return {
    ok: true,
    shapes: new Map<Name, Shape>([
      ['centre-front', line({ through: point(0, 0), direction: UP })],
      ['waist', line({ through: point(0, 0), direction: RIGHT })],
      ['collarbone-level', line({ through: frontNeck, direction: RIGHT })],
      ['shoulder-line', line(shoulder)],
      ['front-neck-point', mark(frontNeck)],
      ['neck-point', mark(neck)],
      ['shoulder-tip', mark(add(neck, scale(shoulder.direction, figure.shoulder)))],
      ['front-neckline', curve(shiftPath(necklines.front, toNeckLevel))],
      ['back-neckline', curve(mirrorPath(shiftPath(necklines.back, toNeckLevel), shoulder))],
      ['back-neck-point', mark(backNeck)],
      ['centre-back', line(mirrorLine({ through: flatBackNeck, direction: DOWN }, shoulder))],
    ]),
  };
}

function mark(at: Point): Shape {
  return { kind: 'point', point: at };
}

function line(of: Line): Shape {
  return { kind: 'line', line: of };
}

function curve(path: Path): Shape {
  return { kind: 'curve', path };
}
