import type { Unit } from './unit.ts';

const SIXTEENTH = 25.4 / 16;

/** A length in mm as people read it: `3.2 cm` to the nearest millimetre, or `1 1/4 in` to the nearest sixteenth. */
export function lengthText(mm: number, unit: Unit): string {
  return unit === 'cm' ? centimetres(mm) : inches(mm);
}

/**
 * A length in mm that somebody states, and nobody has read off: `1.5 mm` where a tenth of a centimetre is too coarse for it, as
 * it is for the sixteenth of an inch that a seam is allowed; otherwise as people read one.
 */
export function statedText(mm: number, unit: Unit): string {
  const coarse = Math.abs(nearestWhole(mm) - mm) > Math.abs(mm) / 10;
  return unit === 'cm' && coarse && Math.abs(mm) < FINE ? `${nearestWhole(mm * 2) / 2} mm` : lengthText(mm, unit);
}

/** What is stated finer than in tenths of a centimetre is shorter than this, mm. */
const FINE = 5;

/**
 * A half goes up, on either side of nothing, however it was worked out: 2 1/2 in laid off is 63.5 mm, and what is left of 3 1/2 in
 * less 1 in falls short of it by the last bit of a number. The two have to read alike.
 */
export function nearestWhole(value: number): number {
  return Math.sign(value) * Math.round(Math.abs(value) + LAST_BITS);
}

/** More than arithmetic loses on a sheet, and less than anyone can see. */
const LAST_BITS = 1e-6;

function centimetres(mm: number): string {
  const rounded = nearestWhole(mm);
  return `${(rounded === 0 ? 0 : rounded / 10).toString().replace('-', '−')} cm`;
}

function inches(mm: number): string {
  const sixteenths = nearestWhole(mm / SIXTEENTH);
  if (sixteenths === 0) return '0 in';
  const sign = sixteenths < 0 ? '−' : '';
  const whole = Math.trunc(Math.abs(sixteenths) / 16);
  const fraction = fractionText(Math.abs(sixteenths) % 16);
  return `${sign}${[whole === 0 ? '' : String(whole), fraction].filter(Boolean).join(' ')} in`;
}

function fractionText(sixteenths: number): string {
  if (sixteenths === 0) return '';
  let top = sixteenths;
  let bottom = 16;
  while (top % 2 === 0) {
    top /= 2;
    bottom /= 2;
  }
  return `${top}/${bottom}`;
}

/** An angle in radians as degrees to one decimal: `22.5°`. */
export function angleText(radians: number): string {
  const degrees = nearestWhole((radians * 1800) / Math.PI) / 10;
  return `${degrees === 0 ? 0 : degrees}°`.replace('-', '−');
}
