import { readdir, readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';
import { keepStops } from './keep-stops.ts';
import { policyFirst } from './policy-first.ts';
import { relativePage } from './relative-page.ts';

/**
 * Finishes the built pages: the policy comes first, stops keep to their words, and addresses start at the page. `404.html` keeps addresses that
 * start at the root: a host answers with it at any depth.
 */
export function finishPages(): AstroIntegration {
  return {
    name: 'finish-pages',
    hooks: {
      'astro:build:done': async ({ dir }) => {
        const root = fileURLToPath(dir);
        const files = await readdir(root, { recursive: true });
        for (const file of files.filter((name) => name.endsWith('.html'))) {
          const page = path.join(root, file);
          const strict = keepStops(policyFirst(await readFile(page, 'utf8')));
          await writeFile(page, file === '404.html' ? strict : relativePage(strict, depthOf(file)));
        }
      },
    },
  };
}

/** How many folders lie between the root of the site and the file. */
function depthOf(file: string): number {
  return file.split(path.sep).length - 1;
}
