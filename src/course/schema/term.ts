import { z } from 'astro/zod';

/** A word of the trade in the glossary. Its id is what `<Term of="…">` names. */
export const termSchema = z.strictObject({
  term: z.string({ error: 'A glossary entry needs the word itself: term: break point' }).min(1),
  /** One or two sentences a first-year student can follow. Plain text. */
  means: z.string({ error: 'A glossary entry says what the word means, in a sentence or two: means: …' }).min(1),
  /** Other words for the same thing. */
  also: z.array(z.string()).default([]),
  /** Ids of entries to read next. */
  see: z.array(z.string()).default([]),
});

export type TermEntry = z.infer<typeof termSchema>;
