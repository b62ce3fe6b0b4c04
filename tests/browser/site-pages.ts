import { readdirSync } from 'node:fs';
import path from 'node:path';
import { siteFolder } from '../../src/cli/site.ts';

/** The address of every page of the built site, from its root: `/`, `/lessons/overlap/`. */
export function sitePages(): readonly string[] {
  return readdirSync(siteFolder(), { recursive: true, encoding: 'utf8' })
    .filter((file) => path.basename(file) === 'index.html')
    .map(
      (file) =>
        `/${file
          .split(path.sep)
          .slice(0, -1)
          .map((folder) => `${folder}/`)
          .join('')}`,
    )
    .sort();
}
