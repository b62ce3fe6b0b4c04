import type { Point } from '../geometry/point.ts';
import { expectedOf } from './bounds.ts';
import type { JudgedCheck } from './judge.ts';
import { isNothing } from './nothing.ts';

/** Which way a reading is off, as an author’s text asks for it. */
export type WayOff = 'less' | 'more' | 'left' | 'right' | 'up' | 'down' | 'clockwise' | 'anticlockwise' | 'other';

/**
 * Which way a check is off: for an amount `less` or `more` than is wanted, where on the wrong side is less still; for a place
 * the way across the sheet that it is further off; for an angle the way it is turned too far. `other` where none can be told.
 */
export function wayOff({ check, reading, bounds }: JudgedCheck): WayOff {
  if (reading === null) return 'other';
  const expected = expectedOf(reading, bounds);
  const over = reading.measured - expected;
  switch (check.measure) {
    case 'distance':
    case 'parallel':
      // From something it should lie on, it is not less off to the one side than to the other.
      if (isNothing(reading.expected)) return across(reading.displacement);
      return amount(over * Math.sign(reading.expected));
    case 'level':
    case 'length':
    case 'walk':
    case 'angle':
    case 'bow':
      return amount(over);
    case 'squareness':
      return over > 0 ? 'anticlockwise' : 'clockwise';
    default:
      return across(reading.displacement);
  }
}

function amount(over: number): WayOff {
  return over > 0 ? 'more' : 'less';
}

function across(displacement: Point | null): WayOff {
  if (displacement === null) return 'other';
  const { x, y } = displacement;
  if (Math.abs(x) >= Math.abs(y)) return x > 0 ? 'right' : 'left';
  return y > 0 ? 'up' : 'down';
}
