import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { parse } from 'yaml';
import { lessonSchema } from '../../src/course/schema/lesson.ts';
import { sourceSchema } from '../../src/course/schema/source.ts';
import { termSchema } from '../../src/course/schema/term.ts';

const CONTENT = path.resolve(import.meta.dirname, '../../content');

const text = (file: string): string => readFileSync(path.join(CONTENT, file), 'utf8');

function entries<T>(file: string, read: (entry: unknown) => T): ReadonlyMap<string, T> {
  const all = parse(text(file)) as Readonly<Record<string, unknown>>;
  return new Map(Object.entries(all).map(([id, entry]) => [id, read(entry)]));
}

export const terms = entries('glossary/en.yaml', (entry) => termSchema.parse(entry));
export const sources = entries('sources/en.yaml', (entry) => sourceSchema.parse(entry));

/** Every lesson: its id, its head, and its text. */
export const lessons = readdirSync(path.join(CONTENT, 'lessons/en'))
  .filter((file) => file.endsWith('.mdx'))
  .map((file) => {
    const [, head = '', body = ''] = /^---\n([\s\S]*?)\n---\n([\s\S]*)$/.exec(text(`lessons/en/${file}`)) ?? [];
    return { id: file.replace('.mdx', ''), head: lessonSchema.parse(parse(head)), body };
  });

/** The text of the page about sources and limits. */
export const about = text('pages/en/about.mdx');
