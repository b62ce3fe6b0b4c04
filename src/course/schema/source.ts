import { z } from 'astro/zod';

/** A published source. Its id is what `<Cite of="…">` names. */
export const sourceSchema = z.strictObject({
  /** How it is called in running text: "MTOC 1949". */
  short: z.string({ error: 'A source needs the short name it is called by: short: MTOC 1949' }).min(1),
  /** The whole citation, plain text. */
  full: z.string({ error: 'A source needs its whole citation: author, title, year, place: full: …' }).min(1),
  /** What it is relied on for, in a sentence. */
  use: z.string({ error: 'A source says what it is used for, in a sentence: use: …' }).min(1),
});

export type SourceEntry = z.infer<typeof sourceSchema>;
