import { angleText, lengthText, nearestWhole } from './length.ts';
import { type Message, message } from './message.ts';
import type { Unit } from './unit.ts';

/** A length by which something is off, mm: one that would be shown as nothing is said to be under the least that is shown. */
export function offText(mm: number, unit: Unit): string | Message {
  const text = lengthText(Math.abs(mm), unit);
  return mm !== 0 && text === lengthText(0, unit) ? leastOf(unit) : text;
}

/** How far two lengths or angles are apart, as the reader sees them: the difference of what is shown, not of what is so. */
export function apartText([one, other]: readonly [number, number], of: 'mm' | 'radians', unit: Unit): string | Message {
  const grain = of === 'radians' ? TENTH_OF_A_DEGREE : unit === 'cm' ? 1 : SIXTEENTH;
  const steps = Math.abs(nearestWhole(one / grain) - nearestWhole(other / grain));
  if (steps === 0 && one !== other) return of === 'radians' ? message('off.under-tenth-degree') : leastOf(unit);
  return of === 'radians' ? angleText(steps * grain) : lengthText(steps * grain, unit);
}

const SIXTEENTH = 25.4 / 16;
const TENTH_OF_A_DEGREE = Math.PI / 1800;

function leastOf(unit: Unit): Message {
  return message(unit === 'cm' ? 'off.under-millimetre' : 'off.under-sixteenth');
}
