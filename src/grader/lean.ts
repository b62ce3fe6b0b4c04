import type { Shape } from '../drafting/shape.ts';
import { type Message, message } from '../words/message.ts';
import type { Reading } from './measures/reading.ts';

/** Which way a line leans from the right one: an upright one at its top, a level one toward the shoulder tip. Null of anything but a line. */
export function leanOf({ measured, expected }: Reading, right: Shape | null): Message | null {
  if (right?.kind !== 'line') return null;
  const { x, y } = right.line.direction;
  const anticlockwise = measured > expected;
  if (Math.abs(y) >= Math.abs(x)) return message(anticlockwise ? 'lean.front' : 'lean.tip');
  return message(anticlockwise ? 'lean.rises' : 'lean.falls');
}
