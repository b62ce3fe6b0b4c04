import type { Unit } from './unit.ts';

const SIXTEENTH = 25.4 / 16;

/** A length in mm as people read it: `3.2 cm` to the nearest millimetre, or `1 1/4 in` to the nearest sixteenth. */
export function lengthText(mm: number, unit: Unit): string {
  return unit === 'cm' ? centimetres(mm) : inches(mm);
}

function centimetres(mm: number): string {
  const rounded = Math.round(mm);
  return `${(rounded === 0 ? 0 : rounded / 10).toString().replace('-', '−')} cm`;
}

function inches(mm: number): string {
  const sixteenths = Math.round(mm / SIXTEENTH);
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
  const degrees = Math.round((radians * 1800) / Math.PI) / 10;
  return `${degrees === 0 ? 0 : degrees}°`.replace('-', '−');
}
