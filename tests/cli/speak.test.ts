import { type ChildProcess, spawn } from 'node:child_process';
import { existsSync, openSync } from 'node:fs';
import path from 'node:path';
import { expect, test } from 'vitest';

const GRADE = path.resolve(import.meta.dirname, '../../src/cli/grade.ts');

interface Ended {
  readonly status: number | null;
  readonly err: string;
}

function ended(stdout: number | 'pipe', arrange?: (child: ChildProcess) => void): Promise<Ended> {
  return new Promise((resolve, reject) => {
    const child = spawn(process.execPath, [GRADE, '--help'], { stdio: ['ignore', stdout, 'pipe'] });
    let err = '';
    child.stderr?.setEncoding('utf8').on('data', (text: string) => {
      err += text;
    });
    arrange?.(child);
    child.on('error', reject);
    child.on('close', (status) => resolve({ status, err }));
  });
}

const full = existsSync('/dev/full');

test.skipIf(!full)('what cannot be written is told in a sentence, without a trace', async () => {
  const { status, err } = await ended(openSync('/dev/full', 'w'));
  expect(err.trimEnd()).toMatch(/^What was to be printed could not be written \(ENOSPC[^\n]*\)\. [^\n]*\.$/);
  expect(status).toBe(1);
});

test('a reader that stops reading ends a command quietly', async () => {
  const { status, err } = await ended('pipe', ({ stdout }) => stdout?.destroy());
  expect([status, err]).toEqual([0, '']);
});
