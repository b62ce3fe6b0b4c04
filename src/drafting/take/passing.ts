import { HANDLE_LEAST, HANDLE_REACH } from '../limits.ts';
import { made, type Outcome } from '../outcome.ts';
import { isRecord } from '../record.ts';
import type { Passing } from '../step.ts';
import { unreadable } from './unreadable.ts';

/** How a curve passes one of its points; null where it finds its own way. */
export function takePassing(value: unknown): Outcome<Passing | null> {
  if (value === null) return made(null);
  if (!isRecord(value)) return unreadable({ takes: 'shape' });
  const { turn, before, after } = value;
  if (!isTurn(turn) || !isHandle(before) || !isHandle(after)) return unreadable({ takes: 'shape' });
  return made({ turn, before, after });
}

/** Whether this is an angle in radians within one full turn either way. */
export function isTurn(value: unknown): value is number {
  return typeof value === 'number' && Math.abs(value) <= 2 * Math.PI;
}

/** Whether this is a handle length: a fraction of the chord, neither too short nor too long. */
export function isHandle(value: unknown): value is number {
  return typeof value === 'number' && value >= HANDLE_LEAST && value <= HANDLE_REACH;
}
