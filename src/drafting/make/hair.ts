/**
 * A gap below this, mm, is spoken of as a hair: shown in the reader's unit it could round to nothing, or make two
 * lengths that differ look the same.
 */
export const HAIR = 1;
