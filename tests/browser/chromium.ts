import { spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync } from 'node:fs';
import path from 'node:path';

const NAMES = ['chromium', 'chromium-browser'];

/** The path of an installed Chromium: the one the variable CHROMIUM names, else the first on PATH; null where none is. */
export function findChromium(): string | null {
  if (process.env.CHROMIUM) return process.env.CHROMIUM;
  const folders = (process.env.PATH ?? '').split(path.delimiter);
  return folders.flatMap((folder) => NAMES.map((name) => path.join(folder, name))).find(isProgram) ?? null;
}

/**
 * Sees to it that there is a Chromium: an installed one is taken; on Debian, as root, the distribution's is installed;
 * elsewhere Playwright's own. Throws where none can be had.
 */
export function ensureChromium(): void {
  if (findChromium()) return;
  if (existsSync('/etc/debian_version') && process.getuid?.() === 0) {
    command('apt-get', ['update', '-qq']);
    command('apt-get', ['install', '-y', '-qq', '--no-install-recommends', 'chromium', 'fonts-liberation']);
    return;
  }
  command(process.execPath, [path.resolve('node_modules/@playwright/test/cli.js'), 'install', 'chromium']);
}

function isProgram(file: string): boolean {
  try {
    accessSync(file, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

function command(program: string, args: readonly string[]): void {
  const { status } = spawnSync(program, args, {
    stdio: 'inherit',
    env: { ...process.env, DEBIAN_FRONTEND: 'noninteractive' },
  });
  if (status !== 0) throw new Error(`No Chromium for the browser tests: "${program} ${args.join(' ')}" failed.`);
}
