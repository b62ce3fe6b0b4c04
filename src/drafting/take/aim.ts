import type { Point } from '../../geometry/point.ts';
import { message } from '../../words/message.ts';
import { isDirection } from '../name.ts';
import { failed, made, type Outcome } from '../outcome.ts';
import type { Scope } from '../scope.ts';
import type { Direction } from '../step.ts';
import type { Aim } from '../taken.ts';
import type { Blank } from '../verbs.ts';
import { wordOf } from '../word-of.ts';
import { takeObject } from './object.ts';
import { takePlace } from './place.ts';
import { unreadable } from './unreadable.ts';

/** The unit vectors of the four ways across the sheet. */
export const ways: Readonly<Record<Direction, Point>> = {
  left: { x: -1, y: 0 },
  right: { x: 1, y: 0 },
  up: { x: 0, y: 1 },
  down: { x: 0, y: -1 },
};

/** A direction word, or the name of a point. */
export function takeAim(value: unknown, blank: Blank, scope: Scope): Outcome<Aim> {
  if (typeof value !== 'string') return unreadable(blank);
  if (isDirection(value)) return made({ kind: 'way', word: value, way: ways[value] });
  const taken = takeObject(value, ['point'], scope);
  if (taken.ok) return made({ kind: 'point', name: value, point: taken.value.point });
  // Of a word that is like no name, a direction was as likely meant.
  const { message: why } = taken;
  const isUnknown = 'key' in why && why.key === 'problem.unknown';
  return isUnknown ? failed(null, message('problem.unknown-way', { name: wordOf(value) })) : taken;
}

/** A direction word, the name of a point, or a place in mm. */
export function takeNear(value: unknown, blank: Blank, scope: Scope): Outcome<Aim> {
  if (!Array.isArray(value)) return takeAim(value, blank, scope);
  const taken = takePlace(value, blank);
  return taken.ok ? made({ kind: 'place', point: taken.value }) : taken;
}
