import type { ShapeKind } from '../../drafting/shape.ts';
import type { Field } from '../../drafting/verbs.ts';
import type { Say } from '../say.ts';

/** What a blank asks for, short enough to stand in it. */
export function wantedIn({ blank, field, optional }: Field, say: Say): string {
  const what =
    blank.takes === 'object'
      ? say('table.blank.object', { kinds: kindsKey(blank.kinds) })
      : blank.takes === 'heading'
        ? say('table.blank.heading', { end: field })
        : say(`table.blank.${blank.takes}` as 'table.blank.length');
  return optional ? say('table.blank.optional', { what }) : what;
}

function kindsKey(kinds: readonly ShapeKind[]): string {
  if (kinds.includes('point')) return kinds.length === 1 ? 'point' : 'any';
  return kinds.length === 1 ? (kinds[0] as string) : 'either';
}

/** What a blank is called to those who hear it: the words before it in the sentence, and what it takes. */
export function labelAfter(before: string, wanted: string): string {
  const words = before.replaceAll(/[.,;:]/g, '').trim();
  return words === '' ? wanted : `${words}: ${wanted}`;
}
