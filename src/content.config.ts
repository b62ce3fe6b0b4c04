import { defineCollection } from 'astro:content';
import { glob } from 'astro/loaders';
import { z } from 'astro/zod';

/** The lessons: one MDX file each under content/lessons, in a folder for each language. The id of one is `en/overlap`. */
const lessons = defineCollection({
  loader: glob({ base: './content/lessons', pattern: '**/*.mdx' }),
  schema: z.strictObject({
    title: z.string(),
    /** What the lesson is for, in a sentence: shown on the contents page. */
    summary: z.string(),
    /** Its place in the course. */
    order: z.number().int().positive(),
    /** The exercises that belong to it, by file name without `.yaml`, in the order they are worked. */
    exercises: z.array(z.string()).default([]),
  }),
});

export const collections = { lessons };
