import { defineCollection } from 'astro:content';
import { file, glob } from 'astro/loaders';
import { lessonSchema } from './course/schema/lesson.ts';
import { pageSchema } from './course/schema/page.ts';
import { sourceSchema } from './course/schema/source.ts';
import { termSchema } from './course/schema/term.ts';

/** What authors write, by language where it is prose. A second language is a folder beside `en`. */
export const collections = {
  lessons: defineCollection({ loader: glob({ base: './content/lessons/en', pattern: '*.mdx' }), schema: lessonSchema }),
  pages: defineCollection({ loader: glob({ base: './content/pages/en', pattern: '*.mdx' }), schema: pageSchema }),
  terms: defineCollection({ loader: file('./content/glossary/en.yaml'), schema: termSchema }),
  sources: defineCollection({ loader: file('./content/sources/en.yaml'), schema: sourceSchema }),
};
