/**
 * Every tolerance of the geometry, in millimetres or radians, each with its reason.
 * Nothing else in the project may invent one.
 */

/** Two points closer than this are one point: a tenth of the accuracy promised (1e-6 mm), above rounding at 2 m (4e-13 mm). */
export const COINCIDENT = 1e-7;

/** Lines whose directions differ by less than this do not cross: over a 2 m sheet they part by less than 2e-6 mm. */
export const PARALLEL = 1e-9;

/** Root finding on a curve stops when the step is below this, mm: a tenth of COINCIDENT. */
export const CONVERGED = 1e-8;

/** How far a fitted parallel curve may stray from the true parallel, mm: a tenth of the accuracy promised. */
export const FIT = 1e-7;

/** From this distance on, mm, the fit of a parallel loosens in proportion: rounding would otherwise forbid it (2e-9 mm at 100 m). */
export const FAR_OFF = 1e5;

/** Two crossings closer than this along a path are one, mm: nearer than the accuracy promised nobody can tell them apart. */
export const SAME_CROSSING = 1e-6;

/** A bend of direction below this is smooth, radians: at a handle of 100 mm it moves the curve by 1e-4 mm. */
export const SMOOTH = 1e-6;

/** A step of a curve's parameter (0 to 1) too small to matter: on a piece 2 m long it moves a point by 2e-9 mm. */
export const PARAMETER = 1e-12;

/**
 * Two crossings that a path joins without leaving COINCIDENT are one touch when they are no further apart than this, mm;
 * further, the path runs along what it meets. Circles of 1 m touching a line stay so near for 0.03 mm, curves that also
 * share their curvature for about 1 mm.
 */
export const TOUCH = 1;
