import { spawn } from 'node:child_process';
import path from 'node:path';
import { buildSite, ROOT, syncTypes } from '../../src/cli/site.ts';
import { ensureChromium } from '../browser/chromium.ts';
import { asOne, type Count, honest, playwrightCount, plus, vitestCount } from './count.ts';

export const STAGES = ['types', 'lint', 'unit', 'build', 'site', 'browser'] as const;
export type Stage = (typeof STAGES)[number];

export function isStage(word: string): word is Stage {
  return (STAGES as readonly string[]).includes(word);
}

const RESULTS = path.join(ROOT, 'test-results');

/** Runs one stage, shows what its tools say, and gives the count. */
export function runStage(stage: Stage, rest: readonly string[]): Promise<Count> {
  return stages[stage](rest);
}

const stages: Readonly<Record<Stage, (rest: readonly string[]) => Promise<Count>>> = {
  types: async () => {
    await syncTypes();
    const compiled = await tool('typescript/bin/tsc', ['--noEmit', '-p', '.']);
    const checked = await tool('@astrojs/check/bin/astro-check.js', ['--minimumSeverity', 'warning']);
    return plus(asOne(compiled), asOne(checked));
  },
  lint: async (rest) =>
    asOne(
      await tool('@biomejs/biome/bin/biome', ['check', '--error-on-warnings', ...(rest.length > 0 ? rest : ['.'])]),
    ),
  unit: (rest) => vitest('unit', rest),
  build: async () => asOne(await buildSite().then(() => 0, reported)),
  site: (rest) => vitest('site', rest),
  browser: async (rest) => {
    ensureChromium();
    const report = path.join(RESULTS, 'browser.json');
    const code = await tool('@playwright/test/cli.js', ['test', '-c', 'tests/browser/playwright.config.ts', ...rest], {
      PLAYWRIGHT_JSON_OUTPUT_FILE: report,
    });
    return honest(playwrightCount(report), code);
  },
};

async function vitest(project: string, rest: readonly string[]): Promise<Count> {
  const report = path.join(RESULTS, `${project}.json`);
  const code = await tool('vitest/vitest.mjs', [
    'run',
    ...['--config', 'tests/vitest.config.ts', '--project', project],
    ...['--reporter=default', '--reporter=json', `--outputFile.json=${report}`],
    ...rest,
  ]);
  return honest(vitestCount(report), code);
}

/** Runs a tool of node_modules with the Node that runs this, from the root, sending nothing home; gives its exit code. */
function tool(file: string, args: readonly string[], env: Readonly<Record<string, string>> = {}): Promise<number> {
  const child = spawn(process.execPath, [path.join(ROOT, 'node_modules', file), ...args], {
    cwd: ROOT,
    stdio: 'inherit',
    env: { ...process.env, ASTRO_TELEMETRY_DISABLED: '1', ...env },
  });
  return new Promise((resolve, reject) => {
    child.on('error', reject);
    child.on('exit', (code) => resolve(code ?? 1));
  });
}

function reported(error: unknown): number {
  console.error(error);
  return 1;
}
