import type { en } from './en/index.ts';
import type { Entry } from './entry.ts';

type Catalogue = typeof en;

export type Key = keyof Catalogue & string;

export type Needs<K extends Key> = Catalogue[K] extends Entry<infer Needed> ? Needed : never;

/**
 * What fills a message: text, a number, a length (`mm`; `stated` where it is said and not read off) or an angle (`radians`) in the reader's unit, the name of an
 * object, a list, or another message (`sentence` where it stands as a sentence of its own, and begins with a capital). `off` is a length in mm by which something is off, which is never shown as nothing;
 * `apart` is how far two lengths or angles are apart as they are shown, so that three figures of one sentence agree.
 */
export type Value =
  | string
  | number
  | { readonly mm: number }
  | { readonly stated: number }
  | { readonly radians: number }
  | { readonly off: number }
  | { readonly apart: readonly [number, number]; readonly unit: 'mm' | 'radians' }
  | { readonly named: string }
  | { readonly namedAll: readonly string[] }
  | { readonly listed: readonly (string | Message)[] }
  | { readonly said: Message }
  | { readonly sentence: Message };

/** A sentence of the catalogue not yet said: its key and what fills it. */
export interface Catalogued {
  readonly key: Key;
  readonly values: Readonly<Record<string, Value>>;
}

/** A sentence an author wrote, in an exercise for instance: an ICU message and what fills it. */
export interface Written {
  readonly text: string;
  readonly values: Readonly<Record<string, Value>>;
}

/** A sentence not yet said; `say` says it in a language and a unit. */
export type Message = Catalogued | Written;

/** A message of the catalogue; the compiler checks that every value the entry needs is there. */
export function message<K extends Key>(
  key: K,
  ...values: [Needs<K>] extends [never] ? [] : [Readonly<Record<Needs<K>, Value>>]
): Catalogued {
  return { key, values: values[0] ?? {} };
}

/** A message an author wrote. */
export function written(text: string, values: Readonly<Record<string, Value>>): Written {
  return { text, values };
}
