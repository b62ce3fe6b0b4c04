import { people } from '../garment/people.ts';
import type { Fault, Place } from '../grader/reading/fault.ts';
import { unknownName } from '../grader/reading/unknown.ts';

/** That there is no such invented person. */
export function personFaults(named: string, at: Place): readonly Fault[] {
  const known = people.map(({ id }) => id);
  return known.includes(named) ? [] : [{ at, message: unknownName('what.person', named, known) }];
}
