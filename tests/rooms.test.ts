import { existsSync, readdirSync, readFileSync } from 'node:fs';
import path from 'node:path';
import ts from 'typescript';
import { describe, expect, test } from 'vitest';

const SRC = path.resolve(import.meta.dirname, '../src');

/** The rooms in the order of travel: a room imports itself and the rooms before it. Those of one entry are one level. */
const ORDER: readonly (readonly string[])[] = [
  ['words'],
  ['geometry'],
  ['drafting'],
  ['garment'],
  ['grader'],
  ['exchange'],
  ['table'],
  ['course'],
  ['desk'],
  ['cli'],
  ['pages', 'layouts', 'styles'],
];

/** Rooms that run the same in a browser, in Node and at build time, and the packages they may use. */
const KERNEL: Readonly<Record<string, readonly string[]>> = {
  words: ['intl-messageformat'],
  geometry: ['bezier-js'],
  drafting: ['valibot'],
  garment: ['valibot', 'pure-rand'],
  grader: ['valibot'],
  exchange: ['valibot', 'pure-rand', 'fflate', '@scure/base', 'papaparse', 'yaml'],
};

interface Import {
  readonly from: string;
  readonly what: string;
}

const files = readdirSync(SRC, { recursive: true, encoding: 'utf8' })
  .filter((file) => /\.(?:ts|tsx|astro)$/.test(file))
  .map((file) => file.split(path.sep).join('/'));
const imports = files.flatMap(importsOf);

test('every folder of src is a room', () => {
  const folders = readdirSync(SRC, { withFileTypes: true }).filter((entry) => entry.isDirectory());
  expect(folders.map(({ name }) => name).filter((name) => levelOf(name) < 0)).toEqual([]);
});

test('imports point from later rooms to earlier ones only', () => {
  const backward = imports.filter(({ from, what }) => {
    const target = targetOf(from, what);
    // Files of src itself are settings that Astro insists on: they stand after every room.
    return target !== null && from.includes('/') && levelOf(roomOf(target)) > levelOf(roomOf(from));
  });
  expect(backward).toEqual([]);
});

test('no file leads back to itself by what it imports, types among it', () => {
  const onward = new Map(files.map((file) => [file, [] as string[]]));
  for (const { from, what } of imports) {
    const target = targetOf(from, what);
    if (target !== null) onward.get(from)?.push(target);
  }
  const reached = (file: string): ReadonlySet<string> => {
    const seen = new Set<string>();
    const open = [...(onward.get(file) ?? [])];
    for (let next = open.pop(); next !== undefined; next = open.pop()) {
      if (seen.has(next)) continue;
      seen.add(next);
      open.push(...(onward.get(next) ?? []));
    }
    return seen;
  };
  expect(files.filter((file) => reached(file).has(file))).toEqual([]);
});

describe('the kernel, from words to exchange', () => {
  const kernel = files.filter((file) => roomOf(file) in KERNEL);

  test('uses only its own packages, and nothing of Node', () => {
    const foreign = imports.filter(
      ({ from, what }) =>
        roomOf(from) in KERNEL && targetOf(from, what) === null && !KERNEL[roomOf(from)]?.includes(packageOf(what)),
    );
    expect(foreign).toEqual([]);
  });

  test('compiles with the names of the language alone: no document, no window, no process', () => {
    expect(complaints(kernel.map((file) => path.join(SRC, file)))).toEqual([]);
  }, 60_000);

  test('would be caught touching the DOM or Node', () => {
    const offenders = path.join(import.meta.dirname, 'rooms-offender.ts');
    const found = complaints([offenders], { [offenders]: 'export const a = [document.title, process.cwd()];\n' });
    expect(found).toHaveLength(2);
  }, 60_000);
});

function importsOf(file: string): readonly Import[] {
  const text = readFileSync(path.join(SRC, file), 'utf8');
  const script = file.endsWith('.astro') ? (/^---\n([\s\S]*?)\n---/.exec(text)?.[1] ?? '') : text;
  const { importedFiles } = ts.preProcessFile(script, true, true);
  return importedFiles.map(({ fileName }) => ({ from: file, what: fileName }));
}

/** The imported file, from src; null for a package. */
function targetOf(from: string, what: string): string | null {
  if (!what.startsWith('.')) return null;
  return path.posix.join(path.posix.dirname(from), what);
}

function roomOf(file: string): string {
  return file.split('/')[0] ?? '';
}

function levelOf(room: string): number {
  return ORDER.findIndex((level) => level.includes(room));
}

function packageOf(what: string): string {
  return what
    .split('/')
    .slice(0, what.startsWith('@') ? 2 : 1)
    .join('/');
}

/** The errors of the files compiled without the DOM and without Node; `made` are files that are not on disk. */
function complaints(roots: readonly string[], made: Readonly<Record<string, string>> = {}): readonly string[] {
  const options: ts.CompilerOptions = {
    target: ts.ScriptTarget.ES2024,
    module: ts.ModuleKind.ESNext,
    moduleResolution: ts.ModuleResolutionKind.Bundler,
    lib: ['lib.es2024.d.ts'],
    types: [],
    strict: true,
    skipLibCheck: true,
    noEmit: true,
    allowImportingTsExtensions: true,
    resolveJsonModule: true,
  };
  const compiler = ts.createCompilerHost(options);
  const read = compiler.readFile.bind(compiler);
  compiler.readFile = (file) => made[file] ?? read(file);
  compiler.fileExists = (file) => file in made || existsSync(file);
  const program = ts.createProgram([...roots], options, compiler);
  return ts.getPreEmitDiagnostics(program).map(({ file, messageText }) => {
    const where = file ? `${path.relative(SRC, file.fileName)}: ` : '';
    return where + ts.flattenDiagnosticMessageText(messageText, '\n');
  });
}
