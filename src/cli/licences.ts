import { readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import type { Plugin } from 'vite';

/** Packages whose files are served without being part of a script. */
const FONTS = ['@fontsource-variable/source-sans-3', '@fontsource-variable/source-serif-4'];

/** Writes `licences.txt` beside the pages: the licence of every package whose code or fonts the site serves. */
export function licences(root: string): Plugin {
  return {
    name: 'licences',
    applyToEnvironment: ({ name }) => name === 'client',
    generateBundle(_options, bundle) {
      const modules = Object.values(bundle).flatMap((part) => (part.type === 'chunk' ? part.moduleIds : []));
      const packages = [...new Set([...FONTS, ...modules.flatMap(packageOf)])].sort();
      this.emitFile({ type: 'asset', fileName: 'licences.txt', source: packages.map(notice(root)).join('\n') });
    },
  };
}

/** The package a module belongs to, in a list; an empty list for the project's own and for made modules. */
export function packageOf(module: string): readonly string[] {
  const found = /.*\/node_modules\/((?:@[^/]+\/)?[^/]+)\//.exec(module.split(path.sep).join('/'));
  return found?.[1] ? [found[1]] : [];
}

/** The notice of one package: its name, its version and the text of its licence. */
function notice(root: string): (name: string) => string {
  return (name) => {
    const folder = path.join(root, 'node_modules', name);
    const { version, license } = JSON.parse(readFileSync(path.join(folder, 'package.json'), 'utf8')) as Readonly<
      Record<string, string>
    >;
    // Of two licences to choose from, the one that the project is under itself.
    const files = readdirSync(folder).filter((file) => /^licen[cs]e/i.test(file));
    const file = files.find((candidate) => /mit/i.test(candidate)) ?? files[0];
    const text = file ? readFileSync(path.join(folder, file), 'utf8').trim() : `Licence: ${license}`;
    return `${'='.repeat(80)}\n${name} ${version}\n${'='.repeat(80)}\n\n${text}\n`;
  };
}
