import { compiledContent, getHeadings } from '../../../docs/teaching.md';
import { AuthoringError } from '../../course/authoring-error.ts';

/** The teacher's guide, which is written once: here it is a page of the site. */
const html = await compiledContent();

const firstPart = html.indexOf('<h2');

/** Its title and what it begins with, before its parts. */
export const head = html.slice(0, firstPart);

/** Its parts. */
export const rest = html.slice(firstPart);

/** The heads of its parts, each with the name by which the page leads to it. */
export const parts = getHeadings().filter(({ depth }) => depth === 2);

/** What it is called. */
export const title = getHeadings().find(({ depth }) => depth === 1)?.text ?? '';

/** The address of the part with this number. */
export function partAt(number: number): string {
  const part = parts.find(({ text }) => text.startsWith(`${number}.`));
  if (part === undefined) throw new AuthoringError(`docs/teaching.md has no part ${number}, to which the desk leads.`);
  return `/desk/teaching/#${part.slug}`;
}
