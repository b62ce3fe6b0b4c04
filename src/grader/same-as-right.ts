import type { Shape } from '../drafting/shape.ts';
import type { Check } from './exercise.ts';
import { lineNamed, type Named, pointNamed, shapeNamed } from './measures/lookup.ts';

/**
 * Whether a check holds for an answer that is the right one itself, seen without a reading: it is off by nothing from itself,
 * wherever what it is measured from is there. False where only a reading can tell.
 */
export function holdsOfItself(check: Check, answer: Shape, reference: Named): boolean {
  // How far a curve strays from itself, or turns more than itself, is nothing, and so within any range that begins at nothing.
  if (check.measure === 'shape' || check.measure === 'bend')
    return answer.kind === 'curve' && check.least === undefined;
  if (check.least !== undefined || check.most !== undefined) return false;
  switch (check.measure) {
    case 'position':
    case 'level':
      return answer.kind === 'point';
    case 'inflection':
      return answer.kind === 'curve';
    case 'length':
      return answer.kind === 'curve' || answer.kind === 'length';
    case 'angle':
      return answer.kind === 'angle';
    case 'distance': {
      const from = shapeNamed(reference, check.from)?.kind;
      return answer.kind === 'point' && (from === 'point' || from === 'line');
    }
    case 'line':
      return answer.kind === 'line' && check.between.every((name) => pointNamed(reference, name) !== null);
    case 'squareness':
      return answer.kind === 'line' && lineNamed(reference, check.to) !== null;
    default:
      return false;
  }
}
