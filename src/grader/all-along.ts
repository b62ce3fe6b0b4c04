import type { Check } from './exercise.ts';

/** Whether a check holds all along an answer, so that a band about the right one shows what it allows; others look at single places, or at a size. */
export function isAllAlong({ measure }: Check): boolean {
  switch (measure) {
    case 'position':
    case 'distance':
    case 'level':
    case 'line':
    case 'parallel':
    case 'shape':
      return true;
    default:
      return false;
  }
}
