import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { mkdir } from 'node:fs/promises';
import { createServer, request } from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, beforeAll, describe, expect, test } from 'vitest';
import { host } from '../../src/cli/host.ts';

const base = mkdtempSync(path.join(tmpdir(), 'host-'));
const folder = path.join(base, 'site');
let open: Awaited<ReturnType<typeof host>>;

beforeAll(async () => {
  await mkdir(path.join(folder, 'a page'), { recursive: true });
  writeFileSync(path.join(base, 'outside.txt'), 'not for you');
  writeFileSync(path.join(folder, 'index.html'), 'home');
  writeFileSync(path.join(folder, 'a page/index.html'), 'inner');
  open = await host({ folder, under: '/x/' }, 0);
});

afterAll(() => {
  open.server.close();
  open.server.closeAllConnections();
  rmSync(base, { recursive: true });
});

describe('a hosted folder', () => {
  test('answers with index.html for a folder, under the path it is served at', async () => {
    const response = await fetch(open.address);
    expect([response.status, await response.text()]).toEqual([200, 'home']);
    expect(response.headers.get('content-type')).toBe('text/html; charset=utf-8');
    expect(response.headers.get('content-encoding')).toBe('gzip');
  });

  test('sends a folder without its slash to the one with it, so that relative links lead right', async () => {
    const response = await fetch(`${open.address}a%20page`, { redirect: 'manual' });
    expect([response.status, response.headers.get('location')]).toEqual([308, '/x/a%20page/']);
  });

  test.each(['/x/none', '/x/none/', '/', '/y/', '/x/%00'])('has nothing at %s', async (where) => {
    expect(await status(where)).toBe(404);
  });

  test.each(['/x/../../outside.txt', '/x/%2e%2e/outside.txt', '/x/..%2foutside.txt', '/x/a/%2e%2e/%2e%2e/outside.txt'])(
    'gives nothing from outside by %s',
    async (where) => {
      expect(await status(where)).toBe(404);
    },
  );

  test('answers 400 to an address that cannot be read, and 405 to anything but reading', async () => {
    expect(await status('/x/%E0%A4%A')).toBe(400);
    expect(await status('/x/', 'POST')).toBe(405);
  });

  test('answers with the site’s own page for what is not there, when it has one', async () => {
    writeFileSync(path.join(folder, '404.html'), 'lost');
    const response = await fetch(`${open.address}none`);
    expect([response.status, await response.text()]).toEqual([404, 'lost']);
    rmSync(path.join(folder, '404.html'));
  });
});

test('a busy port gets the next one', async () => {
  const busy = createServer();
  await new Promise<void>((resolve) => busy.listen(0, '127.0.0.1', resolve));
  const { port } = busy.address() as AddressInfo;
  const next = await host({ folder, under: '/' }, port);
  expect((next.server.address() as AddressInfo).port).toBeGreaterThan(port);
  expect(await (await fetch(next.address)).text()).toBe('home');
  next.server.close();
  next.server.closeAllConnections();
  busy.close();
});

/** The status for a path as written: `fetch` would tidy its dots first. */
function status(where: string, method = 'GET'): Promise<number> {
  const { port } = open.server.address() as AddressInfo;
  return new Promise((resolve, reject) => {
    const asked = request({ host: '127.0.0.1', port, path: where, method }, (response) => {
      response.resume();
      resolve(response.statusCode ?? 0);
    });
    asked.on('error', reject);
    asked.end();
  });
}
