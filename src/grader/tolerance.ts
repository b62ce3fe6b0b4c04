/** How hard a teacher marks: every tolerance is multiplied by the strictness's factor. */
export type Strictness = 'learner' | 'workroom' | 'sample-room';

export const strictnessFactor: Readonly<Record<Strictness, number>> = { learner: 2, workroom: 1, 'sample-room': 0.5 };

export type ToleranceClass = 'mark' | 'seam' | 'square' | 'level';

/** What a tolerance class allows in the workroom: a length in mm and an angle in degrees. */
export interface Tolerance {
  readonly length: number;
  readonly angle: number;
}

/**
 * Workroom tolerances. No published tracing tolerance was found; period drafts work in halves, quarters and eighths
 * of an inch, so 3 mm (1/8 in) is a defensible tolerance for a mark (Vincent; MTOC 1949).
 * 1.5 mm (1/16 in) for a walked seam and 1 degree for a square are common practice, no source.
 */
export const tolerances: Readonly<Record<ToleranceClass, Tolerance>> = {
  mark: { length: 3, angle: 1 },
  seam: { length: 1.5, angle: 1 },
  square: { length: 3, angle: 1 },
  level: { length: 3, angle: 1 },
};

export type MeasureUnit = 'mm' | 'deg';

/** The tolerance of a class at a strictness, in the unit of the reading. */
export function toleranceOf(name: ToleranceClass, strictness: Strictness, unit: MeasureUnit): number {
  const base = tolerances[name];
  return (unit === 'mm' ? base.length : base.angle) * strictnessFactor[strictness];
}
