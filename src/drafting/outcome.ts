import type { Message } from '../words/message.ts';

/** What came of trying: a value, or a message and the field at fault (null when no one field is). */
export type Outcome<T> =
  | { readonly ok: true; readonly value: T }
  | { readonly ok: false; readonly field: string | null; readonly message: Message };

export function made<T>(value: T): Outcome<T> {
  return { ok: true, value };
}

export function failed(field: string | null, message: Message): Outcome<never> {
  return { ok: false, field, message };
}
