import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';
import { siteFolder } from '../../src/cli/site.ts';

const SITE = siteFolder();
const pages = existsSync(SITE)
  ? readdirSync(SITE, { recursive: true, encoding: 'utf8' }).filter((file) => file.endsWith('.html'))
  : [];

/** What a page shows to a reader of one unit: the style sheet hides what is written for the other. */
function shownTo(html: string, hidden: RegExp): string {
  const body = html.replace(/<(script|style)\b[\s\S]*?<\/\1>/g, '');
  return body
    .replace(hidden, '')
    .replace(/<[^>]*>/g, '')
    .replace(/\s+/g, ' ');
}

const FOR_INCHES = /<span class="(?:len-in|unit-in|in-inches)">[^<]*<\/span>/g;
const FOR_CM = /<span class="(?:len-cm|unit-cm|in-cm)">[^<]*<\/span>/g;

/** A length with the same in the other unit behind it, in brackets. */
const INCHES_FIRST = /\d in \((?:or )?[\d.]+(?: (?:to|and|by) [\d.]+)? (?:cm|mm)\)/g;
const CM_FIRST = /\d (?:cm|mm) \([\d /]+ in\)/g;

test('a reader of centimetres sees no length in inches first', () => {
  const found = pages.flatMap((file) => {
    const text = shownTo(readFileSync(path.join(SITE, file), 'utf8'), FOR_INCHES);
    return [...text.matchAll(INCHES_FIRST)].map(([length]) => `${file}: ${length}`);
  });
  expect(found).toEqual([]);
});

test('a reader of inches sees no length in centimetres first', () => {
  const found = pages.flatMap((file) => {
    const text = shownTo(readFileSync(path.join(SITE, file), 'utf8'), FOR_CM);
    return [...text.matchAll(CM_FIRST)].map(([length]) => `${file}: ${length}`);
  });
  expect(found).toEqual([]);
});

test('the brief of an exercise speaks of one unit only', () => {
  const briefs = pages.flatMap((file) => {
    const html = readFileSync(path.join(SITE, file), 'utf8');
    const brief = /<p class="brief-words">([\s\S]*?)<\/p>/.exec(html)?.[1];
    return brief === undefined ? [] : [[file, brief] as const];
  });
  expect(briefs.length).toBeGreaterThan(20);
  for (const [file, brief] of briefs) {
    expect(shownTo(brief, FOR_INCHES), file).not.toMatch(/[\d½¼¾] ?in(?:ch)?\b/);
    expect(shownTo(brief, FOR_CM), file).not.toMatch(/\d (?:cm|mm)\b/);
  }
});
