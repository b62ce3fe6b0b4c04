/**
 * How much a draft may ask for. None of these is a tolerance: they stand far outside anything a pattern needs. The first
 * ones bound what a file may hold; what carrying it out may cost, however it is written, is bounded by DRAFT_WORK.
 */

/** Nothing is drawn further than this from the origin, mm: a hundred metres. */
export const SHEET_REACH = 100_000;

/** No amount in an expression is larger than this, whatever its unit (mm, radians, none): far past the sheet's reach. */
export const AMOUNT_REACH = 1e9;

/** Longest name, in characters. */
export const NAME_LENGTH = 60;

/** Longest expression, in characters; bounds the depth of its brackets too. */
export const EXPRESSION_LENGTH = 200;

/** Most points of a curve, and most entries of a seam's run. */
export const LIST_LENGTH = 100;

/** Most cubic pieces in one curve: seams of seams could otherwise double at every step. */
export const CURVE_PIECES = 2000;

/** Most steps in one draft. */
export const DRAFT_LENGTH = 500;

/**
 * What one replay of a draft may cost, in the units of `geometry/work.ts`: a fifth of a second where a unit takes a
 * microsecond. The dearest reference of the course costs less than a hundredth part of it.
 */
export const DRAFT_WORK = 200_000;

/** What a step may cost when the draft's work is spent: enough for points and lines, so that one greedy step does not take the others with it. */
export const STEP_WORK = 100;

/** What laying one cubic piece on the sheet counts as work, for the room it takes. */
export const PIECE_WORK = 4;

/**
 * Longest and shortest handle of a curve, as fractions of its chord. A shorter one would leave the curve without a
 * direction for all practical purposes, and cannot be taken hold of.
 */
export const HANDLE_REACH = 10;
export const HANDLE_LEAST = 0.01;
