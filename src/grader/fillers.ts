import type { Givens } from '../drafting/sheet.ts';
import type { Value } from '../words/message.ts';
import { expectedOf } from './bounds.ts';
import type { JudgedCheck } from './judge.ts';
import { wayOff } from './way-off.ts';

/** What an author's text may use: every measure of the order, and what the check read; which way it is off also where nothing could be read. */
export function fillers(judged: JudgedCheck | null, givens: Givens): Readonly<Record<string, Value>> {
  const measures = [...givens.measures].map(([name, { dimension, value }]): [string, Value] => [
    name,
    dimension === 'length' ? { mm: value } : dimension === 'angle' ? { radians: value } : value,
  ]);
  const reading = judged?.reading ?? null;
  if (judged === null || reading === null) return Object.fromEntries([...measures, ['way', 'other']]);
  const shown = (value: number): Value =>
    reading.unit === 'mm' ? { mm: value } : { radians: (value * Math.PI) / 180 };
  const expected = expectedOf(reading, judged.bounds);
  const off = [reading.measured, expected].map((value) => (reading.unit === 'mm' ? value : (value * Math.PI) / 180));
  const apart: Value = { apart: off as [number, number], unit: reading.unit === 'mm' ? 'mm' : 'radians' };
  return Object.fromEntries([
    ...measures,
    ['off', apart],
    ['way', wayOff(judged)],
    ['measured', shown(Math.abs(reading.measured))],
    ['expected', shown(Math.abs(expected))],
  ]);
}
