import type { Check } from '../exercise.ts';
import { takeBow, takeShape, takeSmoothness } from './curves.ts';
import { takeDistance } from './distance.ts';
import { facing } from './facing.ts';
import { takeBend, takeInflection } from './fairness.ts';
import { takeLevel } from './level.ts';
import { takeLine } from './line.ts';
import { takeParallel } from './parallel.ts';
import { takePosition } from './position.ts';
import type { Reading, Subject } from './reading.ts';
import { takeAngle, takeLength, takeThrough, takeWalk } from './seams.ts';
import { takeSquareness } from './squareness.ts';

/** The reading of any check; null when it cannot be taken. */
export function takeReading(check: Check, { answer, right, reference }: Subject): Reading | null {
  const subject: Subject = { answer: facing(answer, right), right, reference };
  switch (check.measure) {
    case 'position':
      return takePosition(check, subject);
    case 'distance':
      return takeDistance(check, subject);
    case 'line':
      return takeLine(check, subject);
    case 'squareness':
      return takeSquareness(check, subject);
    case 'parallel':
      return takeParallel(check, subject);
    case 'length':
      return takeLength(check, subject);
    case 'walk':
      return takeWalk(check, subject);
    case 'through':
      return takeThrough(check, subject);
    case 'level':
      return takeLevel(check, subject);
    case 'bow':
      return takeBow(check, subject);
    case 'shape':
      return takeShape(check, subject);
    case 'smoothness':
      return takeSmoothness(check, subject);
    case 'inflection':
      return takeInflection(check, subject);
    case 'bend':
      return takeBend(check, subject);
    case 'angle':
      return takeAngle(check, subject);
  }
}
