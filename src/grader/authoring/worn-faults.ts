import type { ShapeKind } from '../../drafting/shape.ts';
import type { Sheet } from '../../drafting/sheet.ts';
import { wornOf } from '../../garment/collar/worn.ts';
import type { WornPlan } from '../../garment/collar/worn-plan.ts';
import { message } from '../../words/message.ts';
import type { Exercise } from '../exercise.ts';
import type { Fault } from '../reading/fault.ts';
import { type NamedObject, objectFaults } from './object-faults.ts';

/** Names under `worn` that the reference does not make, or of kinds that cannot turn over, and a plan by which nothing does. */
export function wornFaults({ worn }: Exercise, reference: Sheet): readonly Fault[] {
  if (worn === undefined) return [];
  const faults = namedIn(worn).flatMap((named) => objectFaults(named, reference));
  if (faults.length > 0) return faults;
  return wornOf(reference, worn) === null ? [{ at: ['worn'], message: message('author.worn-nothing') }] : [];
}

function namedIn(worn: WornPlan): readonly NamedObject[] {
  const one = (field: 'over' | 'until' | 'notch' | 'level', kind: ShapeKind): readonly NamedObject[] => {
    const name = worn[field];
    return name === undefined ? [] : [{ at: ['worn', field], name, kinds: [kind] }];
  };
  const run = (field: 'folds' | 'turns' | 'stays' | 'seam'): readonly NamedObject[] =>
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
