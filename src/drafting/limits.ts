/**
 * How much a draft may ask for. None of these is a tolerance: they keep a spoilt or hostile file from costing more than
 * a sensible one, and they stand far outside anything a pattern needs.
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
 * Longest and shortest handle of a curve, as fractions of its chord. A shorter one would leave the curve without a
 * direction for all practical purposes, and cannot be taken hold of.
 */
export const HANDLE_REACH = 10;
export const HANDLE_LEAST = 0.01;
