/** A value with fields, of which nothing is known yet. */
export type Fields = Readonly<Record<string, unknown>> & { readonly name?: unknown };

/** Whether a value is an object with fields: not null, not a list. */
export function isRecord(value: unknown): value is Fields {
  return typeof value === 'object' && value !== null && !Array.isArray(value);
}
