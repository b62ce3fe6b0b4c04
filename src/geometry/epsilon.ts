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

/** How far a fitted parallel curve may stray from the true parallel, mm: half of the accuracy promised. */
export const FIT = 1e-7;
