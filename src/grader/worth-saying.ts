import type { Check } from './exercise.ts';
import type { JudgedCheck } from './judge.ts';

/** Of the checks that are off those that are said: one fault that several of them see is told once, in its plainest words. */
export function worthSaying(off: readonly JudgedCheck[]): readonly JudgedCheck[] {
  // Of what runs across, it need not be said again by how many degrees it leans.
  const across = off.some(({ reading }) => reading === null);
  // What wavers or has a corner turns too much besides: it is said where the others are right, or nearly.
  const restless = off.some(({ check, status }) => status === 'beyond' && isRestless(check));
  let bends = 0;
  return off.filter(({ check, reading }) => {
    if (check.measure === 'squareness') return !across || reading === null;
    if (check.measure !== 'bend') return true;
    bends += 1;
    return !restless && bends === 1;
  });
}

function isRestless({ measure }: Check): boolean {
  return measure === 'inflection' || measure === 'smoothness';
}
