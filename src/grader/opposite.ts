import { isNothing } from './nothing.ts';

/** Whether what was measured lies on the other side from what was wanted: both are signed, mm. */
export function isAcross(measured: number, wanted: number): boolean {
  return measured * wanted < 0 && !isNothing(measured) && !isNothing(wanted);
}
