import type { Point } from '../geometry/point.ts';
import { type Message, message, type Value } from '../words/message.ts';

/** A part of a displacement is worth saying when it is at least this share of the whole. */
const WORTH_SAYING = 0.35;

/**
 * A displacement on the sheet in the words of the table: "6 mm too high and 3 mm too far toward the front edge". Where it
 * has only one way worth saying, `size` may be said for it: what the whole sentence makes of how far off it is.
 */
export function wayOf(displacement: Point, size: Value = { off: Math.hypot(displacement.x, displacement.y) }): Message {
  const { x, y } = displacement;
  const whole = Math.hypot(x, y);
  const isUpright = Math.abs(y) >= WORTH_SAYING * whole;
  const isAcross = Math.abs(x) >= WORTH_SAYING * whole;
  if (!isUpright && !isAcross) return message('grader.no-way');
  if (isUpright && isAcross) {
    const [one, other] = [uprightWay(y, { off: Math.abs(y) }), acrossWay(x, { off: Math.abs(x) })];
    return message('grader.both-ways', { one: { said: one }, other: { said: other } });
  }
  return isUpright ? uprightWay(y, size) : acrossWay(x, size);
}

/**
 * The same for what is measured from something: where it is off upright alone, too high or too low; else too far from it or
 * too near to it, since the edge is wrong by its distance, whichever way it faces.
 */
export function wayFrom(displacement: Point, isBeyond: boolean, off: Value): Message {
  const { x, y } = displacement;
  if (Math.abs(x) < WORTH_SAYING * Math.hypot(x, y)) return uprightWay(y, off);
  return isBeyond ? message('grader.too-far', { off }) : message('grader.too-near', { off });
}

function uprightWay(y: number, off: Value): Message {
  return y > 0 ? message('grader.too-high', { off }) : message('grader.too-low', { off });
}

function acrossWay(x: number, off: Value): Message {
  return x > 0 ? message('grader.too-near-tip', { off }) : message('grader.too-near-edge', { off });
}
