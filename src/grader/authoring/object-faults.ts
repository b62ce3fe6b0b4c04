import type { ShapeKind } from '../../drafting/shape.ts';
import type { Sheet } from '../../drafting/sheet.ts';
import { message } from '../../words/message.ts';
import { shapeNamed } from '../measures/lookup.ts';
import type { Fault, Place } from '../reading/fault.ts';
import { unknownName } from '../reading/unknown.ts';
import { eitherKind } from './kind.ts';

/** An object that a file names, where it does, and the kinds it may be of. */
export interface NamedObject {
  readonly at: Place;
  readonly name: string;
  readonly kinds: readonly ShapeKind[];
}

/** An object that the reference does not make, or makes of another kind. */
export function objectFaults({ at, name, kinds }: NamedObject, reference: Sheet): readonly Fault[] {
  const shape = shapeNamed(reference, name);
  if (shape === null) {
    const known = [...new Set([...reference.shapes.keys(), ...reference.answers.keys()])];
    return [{ at, message: unknownName('what.sheet-object', name, known) }];
  }
  if (kinds.includes(shape.kind)) return [];
  const values = { name, found: { said: eitherKind([shape.kind]) }, wanted: { said: eitherKind(kinds) } };
  return [{ at, message: message('author.object-kind', values) }];
}
