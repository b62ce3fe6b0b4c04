import type { en } from './en/index.ts';
import type { Entry } from './entry.ts';

type Catalogue = typeof en;

export type Key = keyof Catalogue & string;

export type Needs<K extends Key> = Catalogue[K] extends Entry<infer Needed> ? Needed : never;

/** What fills a message: text, a number, a length or an angle shown in the reader's unit, the name of an object, a list, or another message. */
export type Value =
  | string
  | number
  | { readonly mm: number }
  | { readonly radians: number }
  | { readonly named: string }
  | { readonly namedAll: readonly string[] }
  | { readonly listed: readonly string[] }
  | { readonly said: Message };

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
