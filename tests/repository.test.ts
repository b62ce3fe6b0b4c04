import { execFileSync } from 'node:child_process';
import { existsSync, readFileSync } from 'node:fs';
import path from 'node:path';
import { describe, expect, test } from 'vitest';

const ROOT = path.resolve(import.meta.dirname, '..');

/** What may lie at the top: what a person reads first, what a tool insists on, and the rooms. */
const TOP = new Set([
  ...['README.md', 'DEVELOPERS.md', 'LICENSE'],
  ...['package.json', 'package-lock.json', 'tsconfig.json', 'astro.config.ts'],
  ...['src', 'content', 'exercises', 'tests', 'public', 'docs'],
  ...['.biome.json', '.ci', '.editorconfig', '.gitattributes', '.gitignore', '.npmrc'],
]);

/** A folder of one machine, at the start of a path. */
const MACHINE_PATH = /(?<![\w.~-])\/(?:work|root|home|Users|tmp)\/[\w.-]+/;

const BINARY = /\.(?:png|woff2|ico)$/;

describe.skipIf(!existsSync(path.join(ROOT, '.git')))('what is kept (needs a git checkout)', () => {
  const tracked = existsSync(path.join(ROOT, '.git'))
    ? execFileSync('git', ['ls-files', '-z'], { cwd: ROOT, encoding: 'utf8' }).split('\0').filter(Boolean)
    : [];
  const present = tracked.filter((file) => existsSync(path.join(ROOT, file)));

  test('the top level holds only what belongs there', () => {
    const top = new Set(tracked.map((file) => file.split('/')[0] ?? ''));
    expect([...top].filter((entry) => !TOP.has(entry))).toEqual([]);
  });

  test('no file names a folder of one machine', () => {
    const text = present.filter((file) => !BINARY.test(file));
    const found = text.filter((file) => MACHINE_PATH.test(readFileSync(path.join(ROOT, file), 'utf8')));
    expect(found).toEqual([]);
  });

  test('the lock file names no registry', () => {
    expect(readFileSync(path.join(ROOT, 'package-lock.json'), 'utf8')).not.toContain('"resolved": "http');
  });
});

test('every dependency is pinned to one version', () => {
  const { dependencies = {}, devDependencies = {} } = JSON.parse(
    readFileSync(path.join(ROOT, 'package.json'), 'utf8'),
  ) as Readonly<Record<string, Readonly<Record<string, string>>>>;
  const versions = Object.values({ ...dependencies, ...devDependencies });
  expect(versions.filter((version) => !/^\d+\.\d+\.\d+$/.test(version))).toEqual([]);
});
