/** The reader's unit of length. */
export type Unit = 'cm' | 'in';
