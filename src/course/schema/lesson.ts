import { z } from 'astro/zod';

/** The head of a lesson file. Terms and sources are read from its text. */
export const lessonSchema = z.strictObject({
  /** As it stands in the contents. */
  title: z.string({ error: 'A lesson needs a title: title: The overlap' }).min(1),
  /** Its place in the course: 1 is read first. */
  order: z.int({ error: 'A lesson needs its place in the course, a whole number from 1: order: 1' }).min(1),
  /** One or two sentences that say what the reader will be able to do. */
  lead: z.string({ error: 'A lesson needs a lead, the sentence under its title: lead: …' }).min(1),
  /** Ids of its exercises, in the order to do them; files of `exercises/`. Others that belong to it follow these. */
  exercises: z
    .array(z.string(), { error: 'A lesson lists its exercises, at least one: exercises: [overlap]' })
    .min(1, 'A lesson lists at least one exercise, so that what was read is also drawn.'),
});

export type LessonHead = z.infer<typeof lessonSchema>;
