import { readdir, readFile, writeFile } from 'node:fs/promises';
import path from 'node:path';
import { fileURLToPath } from 'node:url';
import type { AstroIntegration } from 'astro';

/** Attributes that hold one address of the site. */
const ADDRESS = /( (?:href|src|poster|action|component-url|renderer-url|before-hydration-url)=")\/(?!\/)([^"]*)"/g;

/** Scripts and style sheets written into a page stay as they are: the policy holds their hashes. */
const VERBATIM = /(<script\b[^>]*>)([\s\S]*?)(<\/script>)|(<style\b[^>]*>)([\s\S]*?)(<\/style>)/g;

/**
 * Turns every address that starts at the root of the site into one that starts at the page, so that the built site
 * works under any path of any host without being built again. `404.html` is left alone: a host answers with it at any
 * depth.
 */
export function relativeLinks(): AstroIntegration {
  return {
    name: 'relative-links',
    hooks: {
      'astro:build:done': async ({ dir }) => {
        const root = fileURLToPath(dir);
        for (const file of await readdir(root, { recursive: true })) {
          if (!file.endsWith('.html') || file === '404.html') continue;
          const page = path.join(root, file);
          await writeFile(page, relativePage(await readFile(page, 'utf8'), depthOf(file)));
        }
      },
    },
  };
}

/** How many folders lie between the root of the site and the file. */
function depthOf(file: string): number {
  return file.split(path.sep).length - 1;
}

/** The page with every root address made relative, for a page that lies `depth` folders below the root. */
export function relativePage(html: string, depth: number): string {
  const toRoot = depth === 0 ? './' : '../'.repeat(depth);
  const rewrite = (text: string): string => text.replace(ADDRESS, (_all, before, rest) => `${before}${toRoot}${rest}"`);
  let out = '';
  let at = 0;
  for (const verbatim of html.matchAll(VERBATIM)) {
    const opening = verbatim[1] ?? verbatim[4] ?? '';
    const body = verbatim[2] ?? verbatim[5] ?? '';
    const bodyStart = verbatim.index + opening.length;
    out += rewrite(html.slice(at, bodyStart)) + body;
    at = bodyStart + body.length;
  }
  return out + rewrite(html.slice(at));
}
