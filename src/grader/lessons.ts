/** The lessons an exercise may belong to, in the order they are read. */
export const lessons: readonly string[] = [
  'overlap',
  'break-point',
  'roll-line',
  'notch-placement',
  'lapel-and-fold',
  'stand-and-fall',
  'outer-edge',
  'truing-and-walking',
  'from-draft-to-pattern',
  'from-form-to-table',
];
