import type { Point } from '../geometry/point.ts';
import { type Message, message } from '../words/message.ts';

/** A part of a displacement is worth saying when it is at least this share of the whole. */
const WORTH_SAYING = 0.35;

/** A displacement on the sheet in the words of the table: "6 mm too high and 3 mm too far toward the front edge". */
export function wayOf(displacement: Point): Message {
  const size = Math.hypot(displacement.x, displacement.y);
  const upright = Math.abs(displacement.y) >= WORTH_SAYING * size ? uprightWay(displacement.y) : null;
  const across = Math.abs(displacement.x) >= WORTH_SAYING * size ? acrossWay(displacement.x) : null;
  if (upright !== null && across !== null)
    return message('grader.both-ways', { one: { said: upright }, other: { said: across } });
  return upright ?? across ?? message('grader.no-way');
}

function uprightWay(y: number): Message {
  const off = { mm: Math.abs(y) };
  return y > 0 ? message('grader.too-high', { off }) : message('grader.too-low', { off });
}

function acrossWay(x: number): Message {
  const off = { mm: Math.abs(x) };
  return x > 0 ? message('grader.too-near-side', { off }) : message('grader.too-near-edge', { off });
}
