import { spawn } from 'node:child_process';
import path from 'node:path';
import { ROOT } from '../../src/cli/site.ts';
import { ensureChromium } from '../browser/chromium.ts';
import { asOne, type Count, honest, noCount, playwrightCount, plus, vitestCount } from './count.ts';
import { canInstall, findProgram, install } from './debian.ts';

export const STAGES = ['types', 'lint', 'unit', 'build', 'site', 'browser'] as const;
export type Stage = (typeof STAGES)[number];

export function isStage(word: string): word is Stage {
  return (STAGES as readonly string[]).includes(word);
}

/** The folder of this run alone, for its reports and its build: two runs at a time do not meet. */
export const RUN = path.join(ROOT, 'test-results', `run-${process.pid}`);

/** Runs one stage, shows what its tools say, and gives the count. `rest` goes on to the tool. */
export async function runStage(stage: Stage, rest: readonly string[]): Promise<Count> {
  try {
    return await stages[stage](rest);
  } catch (error) {
    console.error(error);
    return { ...noCount, failed: 1 };
  }
}

const stages: Readonly<Record<Stage, (rest: readonly string[]) => Promise<Count>>> = {
  types: async () => {
    const synced = await tool('node_modules/astro/bin/astro.mjs', ['sync']);
    const compiled = synced === 0 ? await tool('node_modules/typescript/bin/tsc', ['--noEmit', '-p', '.']) : synced;
    // The second says again what the first found, and looks into the pages besides.
    if (compiled !== 0) return asOne(compiled);
    const checker = 'node_modules/@astrojs/check/bin/astro-check.js';
    return plus(asOne(compiled), asOne(await tool(checker, ['--minimumSeverity', 'warning'])));
  },
  lint: async (rest) =>
    asOne(await tool('node_modules/@biomejs/biome/bin/biome', ['check', '--error-on-warnings', ...orAll(rest)])),
  unit: (rest) => {
    // A test splits a stream with it. Without it that test is skipped, and says so.
    if (findProgram(['parallel']) === null && canInstall()) install(['parallel']);
    return vitest('unit', rest);
  },
  build: async () => asOne(await tool('src/cli/build.ts', [])),
  site: (rest) => vitest('site', rest),
  browser: async (rest) => {
    ensureChromium();
    const report = path.join(RUN, 'browser.json');
    const args = ['test', '-c', 'tests/browser/playwright.config.ts', ...rest];
    const code = await tool('node_modules/@playwright/test/cli.js', args, { PLAYWRIGHT_JSON_OUTPUT_FILE: report });
    return honest(playwrightCount(report), code);
  },
};

function orAll(paths: readonly string[]): readonly string[] {
  return paths.length > 0 ? paths : ['.'];
}

async function vitest(project: string, rest: readonly string[]): Promise<Count> {
  const report = path.join(RUN, `${project}.json`);
  const code = await tool('node_modules/vitest/vitest.mjs', [
    'run',
    ...['--config', 'tests/vitest.config.ts', '--project', project],
    ...['--reporter=default', '--reporter=json', `--outputFile.json=${report}`],
    ...rest,
  ]);
  return honest(vitestCount(report), code);
}

/** Runs a script with the Node that runs this, from the root, sending nothing home; gives its exit code. */
function tool(script: string, args: readonly string[], env: Readonly<Record<string, string>> = {}): Promise<number> {
  const child = spawn(process.execPath, [path.join(ROOT, script), ...args], {
    cwd: ROOT,
    stdio: 'inherit',
    env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1', ...env },
  });
  return new Promise((resolve, reject) => {
    child.on('error', reject);
    child.on('exit', (code) => resolve(code ?? 1));
  });
}
