import { type Drawn, isDrawn, type Shape } from '../../drafting/shape.ts';
import type { Sheet } from '../../drafting/sheet.ts';
import { lengthOf } from '../../geometry/length.ts';
import { angleFrom, type Line } from '../../geometry/line.ts';
import { distance } from '../../geometry/point.ts';
import { type Message, message } from '../../words/message.ts';
import type { Filling, Hand } from './bench.ts';
import { nearestPlaceOn } from './catch.ts';
import { sayWhere } from './say-change.ts';

/** Lines nearer parallel than this, radians, are read as a distance and not as an angle. For the eye only. */
const AS_PARALLEL = 1e-6;

/** What the tape reads between the objects in hand, without making a step; null until something is pointed at. */
export function readingOf(hand: Hand, sheet: Sheet): Message | null {
  if (hand.tool !== 'measure') return null;
  const { one, other } = hand.filled;
  const first = drawn(sheet, one);
  const second = drawn(sheet, other);
  if (!first) return null;
  return second ? between(first, second) : alone(String(one), first, sheet);
}

function drawn(sheet: Sheet, name: Filling | undefined): Drawn | null {
  const shape: Shape | undefined = typeof name === 'string' ? sheet.shapes.get(name) : undefined;
  return shape && isDrawn(shape) ? shape : null;
}

const LEVEL: Line = { through: { x: 0, y: 0 }, direction: { x: 1, y: 0 } };

function alone(name: string, shape: Drawn, sheet: Sheet): Message {
  if (shape.kind === 'point')
    return message('table.reads-place', { place: { said: sayWhere(name, shape.point, sheet) } });
  if (shape.kind === 'curve') return message('table.reads-long', { length: { mm: lengthOf(shape.path) } });
  return message('table.reads-slope', { angle: { radians: Math.abs(angleFrom(LEVEL, shape.line)) } });
}

function between(a: Drawn, b: Drawn): Message {
  if (a.kind === 'line' && b.kind === 'line') {
    const angle = Math.abs(angleFrom(a.line, b.line));
    const apart = distance(b.line.through, nearestPlaceOn(a, b.line.through));
    return angle < AS_PARALLEL ? apartBy(apart) : message('table.reads-angle', { angle: { radians: angle } });
  }
  const [mark, thing] = a.kind === 'point' ? [a, b] : [b, a];
  if (mark.kind === 'point') return apartBy(distance(mark.point, nearestPlaceOn(thing, mark.point)));
  return message('table.reads-none');
}

function apartBy(mm: number): Message {
  return message('table.reads-apart', { length: { mm } });
}
