import { angleFrom } from '../../geometry/line.ts';
import { turnOf } from '../../geometry/smooth.ts';
import { made, type Outcome } from '../outcome.ts';
import type { AngleShape } from '../shape.ts';
import type { Given } from '../taken.ts';

const angleShape = (angle: number): AngleShape => ({ kind: 'angle', angle });

/** The angle between two lines, from nothing to a right angle; parallel lines make none. */
export function makeProtractor({ from, to }: Given<'protractor'>): Outcome<AngleShape> {
  return made(angleShape(Math.abs(angleFrom(from.line, to.line))));
}

/**
 * How far a curve turns in all from its start to its end, corners included; bends to the other side are taken off. Never
 * negative, so that it does not matter which way the curve was drawn.
 */
export function makeProtractorAlong({ along }: Given<'protractor-along'>): Outcome<AngleShape> {
  return made(angleShape(Math.abs(turnOf(along.path))));
}
