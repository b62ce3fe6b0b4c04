import { spawnSync } from 'node:child_process';
import path from 'node:path';
import { canInstall, findProgram, install } from '../run/debian.ts';

/** The path of an installed Chromium: the one the variable CHROMIUM names, else the first on PATH; null where none is. */
export function findChromium(): string | null {
  return process.env.CHROMIUM || findProgram(['chromium', 'chromium-browser']);
}

/**
 * Sees to it that there is a Chromium: an installed one is taken; on Debian, as root, the distribution's is installed;
 * elsewhere Playwright's own. Throws where none can be had.
 */
export function ensureChromium(): void {
  if (findChromium()) return;
  const had = canInstall() ? install(['chromium', 'fonts-liberation']) : installPlaywrights();
  if (!had) throw new Error('There is no Chromium for the browser tests, and none could be installed.');
}

function installPlaywrights(): boolean {
  const cli = path.resolve('node_modules/@playwright/test/cli.js');
  return spawnSync(process.execPath, [cli, 'install', 'chromium'], { stdio: 'inherit' }).status === 0;
}
