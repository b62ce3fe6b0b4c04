import { COINCIDENT } from '../../geometry/epsilon.ts';
import { distance, dot, type Point } from '../../geometry/point.ts';
import { message } from '../../words/message.ts';
import { failed, made, type Outcome } from '../outcome.ts';
import type { Aim } from '../taken.ts';

/**
 * Which of several places is meant: the furthest in a direction, or the nearest to a point. One place needs no hint;
 * several without a hint, or two that the hint does not tell apart, are a problem. `places` is never empty.
 */
export function choose(places: readonly Point[], near: Aim | undefined): Outcome<Point> {
  const [only] = places;
  if (only && places.length === 1) return made(only);
  if (!near) return failed('near', message('problem.several', { count: places.length }));
  const loss = (place: Point): number => (near.kind === 'way' ? -dot(place, near.way) : distance(place, near.point));
  const [best, next] = places.toSorted((a, b) => loss(a) - loss(b)) as [Point, Point];
  if (loss(next) - loss(best) > COINCIDENT) return made(best);
  if (near.kind === 'way')
    return failed('near', message('problem.tie', { way: { said: message(`way.${near.word}`) } }));
  if (near.kind === 'point') return failed('near', message('problem.tie-point', { name: { named: near.name } }));
  return failed('near', message('problem.tie-place'));
}
