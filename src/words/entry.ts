/**
 * One entry of the English catalogue: an ICU message and the names of the values it needs.
 * The names are given as values so that the compiler checks every use and a test checks them against the message.
 */
export interface Entry<Needed extends string = string> {
  readonly text: string;
  readonly needs: readonly Needed[];
}

export function entry<const Needed extends readonly string[]>(needs: Needed, text: string): Entry<Needed[number]> {
  return { text, needs };
}

/** An entry that needs no values. */
export function plain(text: string): Entry<never> {
  return { text, needs: [] };
}
