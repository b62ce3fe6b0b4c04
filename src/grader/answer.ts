import type { Shape, ShapeKind } from '../drafting/shape.ts';
import type { Problem, Sheet } from '../drafting/sheet.ts';
import type { Name } from '../drafting/step.ts';
import { bowOf } from '../geometry/bow.ts';
import { COINCIDENT } from '../geometry/epsilon.ts';
import { lineThrough } from '../geometry/line.ts';
import { endOf, startOf } from '../geometry/path.ts';
import type { Target } from './exercise.ts';
import type { Named } from './measures/lookup.ts';

/**
 * What a learner pointed out for a target: the kind of thing that is wanted, another kind, or something whose step could
 * not be carried out.
 */
export type Answer =
  | { readonly found: 'right-kind'; readonly shape: Shape; readonly object: Name }
  | { readonly found: 'wrong-kind'; readonly kind: ShapeKind; readonly object: Name }
  | { readonly found: 'not-made'; readonly problem: Problem }
  | { readonly found: 'nothing' };

/** Looks up the answer to a target on a sheet. A straight seam serves as a line, so that the tool chosen does not matter. */
export function answerTo(target: Target, sheet: Named & Pick<Sheet, 'problems'>): Answer {
  const object = sheet.answers.get(target.name);
  if (object === undefined) return { found: 'nothing' };
  const shape = sheet.shapes.get(object);
  if (shape === undefined) {
    const problem = sheet.problems.find(({ name }) => name === object);
    return problem === undefined ? { found: 'nothing' } : { found: 'not-made', problem };
  }
  if (shape.kind === target.makes) return { found: 'right-kind', shape, object };
  const straight = target.makes === 'line' ? straightened(shape) : null;
  if (straight !== null) return { found: 'right-kind', shape: straight, object };
  return { found: 'wrong-kind', kind: shape.kind, object };
}

/** A straight seam as a line; null where it is none. */
export function straightened(shape: Shape): Shape | null {
  if (shape.kind !== 'curve' || Math.abs(bowOf(shape.path)) > COINCIDENT) return null;
  const line = lineThrough(startOf(shape.path), endOf(shape.path));
  return line === null ? null : { kind: 'line', line };
}
