import { randomBytes } from 'node:crypto';
import { mkdtempSync, rmSync, writeFileSync } from 'node:fs';
import { mkdir } from 'node:fs/promises';
import {
  type ClientRequest,
  createServer,
  type IncomingHttpHeaders,
  type IncomingMessage,
  request,
  type Server,
} from 'node:http';
import type { AddressInfo } from 'node:net';
import { tmpdir } from 'node:os';
import path from 'node:path';
import { afterAll, afterEach, beforeAll, describe, expect, test } from 'vitest';
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

  test.each([
    ['site.css', 'text/css; charset=utf-8', 'gzip'],
    ['site.js', 'text/javascript; charset=utf-8', 'gzip'],
    ['list.json', 'application/json; charset=utf-8', 'gzip'],
    ['map.xml', 'application/xml; charset=utf-8', 'gzip'],
    ['mark.svg', 'image/svg+xml; charset=utf-8', 'gzip'],
    ['licences.txt', 'text/plain; charset=utf-8', 'gzip'],
    ['picture.png', 'image/png', undefined],
    ['letters.woff2', 'font/woff2', undefined],
    ['other.bin', 'application/octet-stream', undefined],
  ])('tells what %s is, and compresses what is text, for those who take it so', async (name, type, encoding) => {
    writeFileSync(path.join(folder, name), 'inside');
    const taken = await answerTo(`/x/${name}`, { headers: { 'accept-encoding': 'br, gzip' } });
    expect([taken.headers['content-type'], taken.headers['content-encoding']]).toEqual([type, encoding]);
    const plain = await answerTo(`/x/${name}`);
    expect([plain.headers['content-encoding'], plain.text]).toEqual([undefined, 'inside']);
  });

  test('has each page asked for again, taken as what it is, named to nobody and framed by no other site', async () => {
    expect((await answerTo('/x/')).headers).toMatchObject({
      'cache-control': 'no-cache',
      'x-content-type-options': 'nosniff',
      'referrer-policy': 'no-referrer',
      'content-security-policy': "frame-ancestors 'self'",
      vary: 'accept-encoding',
    });
  });

  test('tells of a page without sending it', async () => {
    const { status, headers, text } = await answerTo('/x/', { method: 'HEAD' });
    expect([status, headers['content-type'], text]).toEqual([200, 'text/html; charset=utf-8', '']);
  });

  test('goes on after a reader who left in the middle', async () => {
    writeFileSync(path.join(folder, 'long.bin'), randomBytes(8_000_000));
    await new Promise<void>((resolve) => {
      ask('/x/long.bin', {}, (response) => {
        response.once('data', () => response.destroy());
        response.once('close', resolve);
      });
    });
    expect((await answerTo('/x/')).status).toBe(200);
  });

  test('has nothing at a folder without a page of its own', async () => {
    await mkdir(path.join(folder, 'bare/index.html'), { recursive: true });
    const { status, headers, text } = await answerTo('/x/bare/');
    expect([status, headers['content-type'], text]).toEqual([404, 'text/plain; charset=utf-8', '404\n']);
    await mkdir(path.join(folder, '404.html'));
    expect((await answerTo('/x/bare/')).status).toBe(404);
    rmSync(path.join(folder, '404.html'), { recursive: true });
  });

  test('is there for this machine alone', () => {
    expect((open.server.address() as AddressInfo).address).toBe('127.0.0.1');
  });

  test.each(['/x/none', '/x/none/', '/', '/y/', '/x/%00'])('has nothing at %s', async (where) => {
    expect((await answerTo(where)).status).toBe(404);
  });

  test.each(['/x/../../outside.txt', '/x/%2e%2e/outside.txt', '/x/..%2foutside.txt', '/x/a/%2e%2e/%2e%2e/outside.txt'])(
    'gives nothing from outside by %s',
    async (where) => {
      expect((await answerTo(where)).status).toBe(404);
    },
  );

  test('answers 400 to an address that cannot be read, and 405 to anything but reading', async () => {
    expect((await answerTo('/x/%E0%A4%A')).status).toBe(400);
    expect((await answerTo('/x/', { method: 'POST' })).status).toBe(405);
  });

  test('answers with the site’s own page for what is not there, when it has one', async () => {
    writeFileSync(path.join(folder, '404.html'), 'lost');
    const response = await fetch(`${open.address}none`);
    expect([response.status, await response.text()]).toEqual([404, 'lost']);
    rmSync(path.join(folder, '404.html'));
  });
});

describe('a port that is taken', () => {
  const open: Server[] = [];
  /** Takes a port, where nobody has it already. */
  const take = async (port: number): Promise<number> => {
    const server = createServer();
    await new Promise<void>((resolve) => server.once('error', () => resolve()).listen(port, '127.0.0.1', resolve));
    open.push(server);
    return (server.address() as AddressInfo | null)?.port ?? port;
  };

  afterEach(() => {
    for (const server of open.splice(0)) {
      server.close();
      server.closeAllConnections();
    }
  });

  test('gets the next one', async () => {
    const port = await take(0);
    const next = await host({ folder, under: '/' }, port);
    open.push(next.server);
    expect((next.server.address() as AddressInfo).port).toBeGreaterThan(port);
    expect(await (await fetch(next.address)).text()).toBe('home');
  });

  test('and the hundred after it too, is said', async () => {
    const port = Math.min(await take(0), 65_000);
    for (let next = port; next <= port + 100; next += 1) await take(next);
    const warned: string[] = [];
    const warn = ({ name }: Error): unknown => warned.push(name);
    process.on('warning', warn);
    await expect(host({ folder, under: '/' }, port)).rejects.toThrow(/EADDRINUSE/);
    await new Promise(setImmediate);
    process.off('warning', warn);
    expect(warned).toEqual([]);
  });
});

/** What came for a path as written: `fetch` would tidy its dots first, and always takes what is compressed. */
interface Came {
  readonly status: number;
  readonly headers: IncomingHttpHeaders;
  readonly text: string;
}

interface Asked {
  readonly method?: string;
  readonly headers?: Readonly<Record<string, string>>;
}

function ask(where: string, asked: Asked, then: (response: IncomingMessage) => void): ClientRequest {
  const { port } = open.server.address() as AddressInfo;
  return request({ host: '127.0.0.1', port, path: where, ...asked }, then).end();
}

async function whole(response: IncomingMessage): Promise<Came> {
  let text = '';
  for await (const part of response.setEncoding('utf8')) text += part;
  return { status: response.statusCode ?? 0, headers: response.headers, text };
}

function answerTo(where: string, asked: Asked = {}): Promise<Came> {
  return new Promise((resolve, reject) => {
    ask(where, asked, (response) => whole(response).then(resolve, reject)).on('error', reject);
  });
}
