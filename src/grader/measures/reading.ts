import type { Shape } from '../../drafting/shape.ts';
import type { Name } from '../../drafting/step.ts';
import type { Point } from '../../geometry/point.ts';
import type { RedMark } from '../result.ts';
import type { MeasureUnit } from '../tolerance.ts';
import type { Named } from './lookup.ts';

/** What a check looks at: the learner's answer, the right one, and the reference's sheet on which names are looked up. */
export interface Subject {
  readonly answer: Shape;
  readonly right: Shape;
  readonly reference: Named;
}

/** One reading of a check. */
export interface Reading {
  readonly measured: number;
  readonly expected: number;
  readonly unit: MeasureUnit;
  /** From where the answer should be to where it is, mm; null where the reading has no direction on the sheet. */
  readonly displacement: Point | null;
  /** The named place where the reading was worst, for lines. */
  readonly spot: Name | null;
  readonly arrow: RedMark['arrow'];
}

/** A reading that is an amount and has no direction on the sheet. */
export function plainReading(measured: number, expected: number, unit: MeasureUnit = 'mm'): Reading {
  return { measured, expected, unit, displacement: null, spot: null, arrow: null };
}

/** Takes a reading; null when the answer or the sheet does not allow it. */
export type Take<C> = (check: C, subject: Subject) => Reading | null;
