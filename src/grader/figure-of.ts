import { type Message, message, type Value } from '../words/message.ts';
import type { JudgedCheck } from './judge.ts';
import { isNothing } from './nothing.ts';

/** The figure that a right answer is known by: how far, how high, how long or how wide it was measured. Null where no check reads one. */
export function figureOf(checks: readonly JudgedCheck[]): Message | null {
  for (const check of checks) {
    const figure = figureRead(check);
    if (figure !== null) return figure;
  }
  return null;
}

function figureRead({ check, reading }: JudgedCheck): Message | null {
  // Is there anything to say? Of what belongs on a line, nobody wants its distance from the line.
  if (reading === null || isNothing(reading.expected)) return null;
  const size = Math.abs(reading.measured);
  const measured: Value = reading.unit === 'mm' ? { mm: size } : { radians: (size * Math.PI) / 180 };
  switch (check.measure) {
    case 'parallel':
    case 'distance':
      return message('figure.from', { measured, from: { named: check.from } });
    case 'level':
      return reading.measured > 0 ? message('figure.level', { measured }) : null;
    case 'length':
    case 'angle':
      return message('figure.size', { measured });
    case 'walk':
      // A part between match marks is not what the answer measures.
      if (check.between !== undefined) return null;
      return message('figure.walk', { measured, expected: { mm: reading.expected } });
    default:
      return null;
  }
}
