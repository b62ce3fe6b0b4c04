/** The lessons an exercise may belong to, in the order they are read. */
export const lessons: readonly string[] = [
  'overlap',
  'break-point',
  'roll-line',
  'lapel-and-fold',
  'notch-placement',
  'stand-and-fall',
  'outer-edge',
  'truing-and-walking',
  'from-draft-to-pattern',
  'from-form-to-table',
];
