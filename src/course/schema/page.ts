import { z } from 'astro/zod';

/** The head of a page that stands outside the lessons. */
export const pageSchema = z.strictObject({
  title: z.string({ error: 'A page needs a title: title: Sources and limits' }).min(1),
  lead: z.string({ error: 'A page needs a lead, the sentence under its title: lead: …' }).min(1),
});
