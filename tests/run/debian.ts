import { spawnSync } from 'node:child_process';
import { accessSync, constants, existsSync } from 'node:fs';
import path from 'node:path';

/** The path of the first of these programs that is on PATH; null where none is. */
export function findProgram(names: readonly string[]): string | null {
  const folders = (process.env.PATH ?? '').split(path.delimiter);
  return folders.flatMap((folder) => names.map((name) => path.join(folder, name))).find(isProgram) ?? null;
}

function isProgram(file: string): boolean {
  try {
    accessSync(file, constants.X_OK);
    return true;
  } catch {
    return false;
  }
}

/** Whether packages of the distribution can be installed here: on Debian, as root. */
export function canInstall(): boolean {
  return existsSync('/etc/debian_version') && process.getuid?.() === 0;
}

/** Installs packages of the distribution; says whether it went well. */
export function install(packages: readonly string[]): boolean {
  return apt('update', '-qq') && apt('install', '-y', '-qq', '--no-install-recommends', ...packages);
}

function apt(...args: readonly string[]): boolean {
  const env = { ...process.env, DEBIAN_FRONTEND: 'noninteractive' };
  return spawnSync('apt-get', args, { stdio: 'inherit', env }).status === 0;
}
