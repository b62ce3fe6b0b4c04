import type { Point } from '../../geometry/point.ts';
import { message } from '../../words/message.ts';
import { SHEET_REACH } from '../limits.ts';
import { failed, made, type Outcome } from '../outcome.ts';
import type { Blank } from '../verbs.ts';
import { unreadable } from './unreadable.ts';

/** Two numbers in mm, across and up, as a point. */
export function takePlace(value: unknown, blank: Blank): Outcome<Point> {
  if (!Array.isArray(value) || value.length !== 2) return unreadable(blank);
  const [x, y] = value as readonly unknown[];
  if (!Number.isFinite(x) || !Number.isFinite(y)) return unreadable(blank);
  const at = { x: x as number, y: y as number };
  if (Math.abs(at.x) > SHEET_REACH || Math.abs(at.y) > SHEET_REACH) return failed(null, message('problem.off-sheet'));
  return made(at);
}
