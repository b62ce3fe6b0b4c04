import type { MeasureName } from './exercise.ts';
import type { MeasureUnit } from './tolerance.ts';

const inDegrees: readonly MeasureName[] = ['squareness', 'smoothness', 'bend', 'angle'];

/** The unit a measure reads in. */
export function unitOf(measure: MeasureName): MeasureUnit {
  return inDegrees.includes(measure) ? 'deg' : 'mm';
}
