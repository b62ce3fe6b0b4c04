import type { Thing } from '../../drafting/plan.ts';
import type { Shape } from '../../drafting/shape.ts';
import type { Name } from '../../drafting/step.ts';
import { type Laying, thingOn } from '../../drafting/thing-on.ts';
import type { Named } from '../measures/lookup.ts';
import type { Ground, ReferencePlan } from './reference-plan.ts';

/** What a thing is on a table, where it is an object; null where it is none, or cannot be made. */
export function shapeOn(thing: Thing, laying: Laying): Shape | null {
  const found = thingOn(thing, laying);
  return found !== null && 'kind' in found ? found : null;
}

/** A ground on a table, as checks look things up there. */
export function namedOn({ places, answers }: ReferencePlan, ground: Ground, laying: Laying): Named {
  const shapeAt = (name: Name): Shape | undefined => {
    const place = places.get(name);
    if (place === undefined) return laying.table.shapes.get(name);
    return shapeOn(ground(place), laying) ?? undefined;
  };
  return { shapes: { get: shapeAt }, answers };
}
