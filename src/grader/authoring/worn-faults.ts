import type { ShapeKind } from '../../drafting/shape.ts';
import type { Sheet } from '../../drafting/sheet.ts';
import { wornOf } from '../../garment/collar/worn.ts';
import type { WornPlan } from '../../garment/collar/worn-plan.ts';
import { message } from '../../words/message.ts';
import type { Exercise } from '../exercise.ts';
import { shapeNamed } from '../measures/lookup.ts';
import type { Fault, Place } from '../reading/fault.ts';
import { unknownName } from '../reading/unknown.ts';
import { eitherKind } from './kind.ts';

/** Names under `worn` that the reference does not make, or of kinds that cannot turn over, and a plan by which nothing does. */
export function wornFaults({ worn }: Exercise, reference: Sheet): readonly Fault[] {
  if (worn === undefined) return [];
  const faults = namedIn(worn).flatMap((named) => nameFaults(named, reference));
  if (faults.length > 0) return faults;
  return wornOf(reference, worn) === null ? [{ at: ['worn'], message: message('author.worn-nothing') }] : [];
}

interface Named {
  readonly at: Place;
  readonly name: string;
  readonly kinds: readonly ShapeKind[];
}

function namedIn(worn: WornPlan): readonly Named[] {
  const one = (field: 'over' | 'until' | 'notch' | 'level', kind: ShapeKind): readonly Named[] => {
    const name = worn[field];
    return name === undefined ? [] : [{ at: ['worn', field], name, kinds: [kind] }];
  };
  const run = (field: 'folds' | 'turns' | 'stays' | 'seam'): readonly Named[] =>
    (worn[field] ?? []).map((name, index) => ({ at: ['worn', field, index], name, kinds: ['point', 'curve'] }));
  return [
    ...one('over', 'line'),
    ...run('folds'),
    ...run('turns'),
    ...one('until', 'point'),
    ...run('stays'),
    ...run('seam'),
    ...one('notch', 'point'),
    ...one('level', 'line'),
  ];
}

function nameFaults({ at, name, kinds }: Named, reference: Sheet): readonly Fault[] {
  const shape = shapeNamed(reference, name);
  if (shape === null) {
    const known = [...new Set([...reference.shapes.keys(), ...reference.answers.keys()])];
    return [{ at, message: unknownName('what.sheet-object', name, known) }];
  }
  if (kinds.includes(shape.kind)) return [];
  const values = { name, found: { said: eitherKind([shape.kind]) }, wanted: { said: eitherKind(kinds) } };
  return [{ at, message: message('author.object-kind', values) }];
}
