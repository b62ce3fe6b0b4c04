import type { MeasureName } from './exercise.ts';
import type { MeasureUnit } from './tolerance.ts';

/** The unit a measure reads in. */
export function unitOf(measure: MeasureName): MeasureUnit {
  switch (measure) {
    case 'squareness':
    case 'smoothness':
    case 'bend':
    case 'angle':
      return 'deg';
    default:
      return 'mm';
  }
}
