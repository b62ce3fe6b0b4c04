/** The lessons an exercise may belong to, in the order they are read. */
export const lessons: readonly string[] = ['overlap', 'break-point', 'roll-line'];
