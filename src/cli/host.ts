import { createReadStream } from 'node:fs';
import { stat } from 'node:fs/promises';
import { createServer, type IncomingMessage, type Server, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';
import path from 'node:path';
import { pipeline } from 'node:stream/promises';
import { createGzip } from 'node:zlib';

const TYPES: Readonly<Record<string, string>> = {
  '.css': 'text/css; charset=utf-8',
  '.html': 'text/html; charset=utf-8',
  '.ico': 'image/x-icon',
  '.js': 'text/javascript; charset=utf-8',
  '.json': 'application/json; charset=utf-8',
  '.png': 'image/png',
  '.svg': 'image/svg+xml; charset=utf-8',
  '.txt': 'text/plain; charset=utf-8',
  '.webmanifest': 'application/manifest+json; charset=utf-8',
  '.woff2': 'font/woff2',
  '.xml': 'application/xml; charset=utf-8',
};

/** Where a folder is served: `under` starts and ends with a slash. */
export interface Place {
  readonly folder: string;
  readonly under: string;
}

/**
 * Serves a folder as any static host does: folders by their index.html, text compressed, `404.html` for the rest.
 * Listens on this machine only; a busy port gets the next one. Port 0 takes any free port.
 */
export async function host(place: Place, port: number): Promise<{ readonly server: Server; readonly address: string }> {
  const server = createServer((request, response) => {
    answer(place, request, response).catch(() => response.destroy());
  });
  await listen(server, port);
  const { port: taken } = server.address() as AddressInfo;
  return { server, address: `http://127.0.0.1:${taken}${place.under}` };
}

/** Listens on the first free port from `port` on, within the next hundred. */
async function listen(server: Server, port: number): Promise<void> {
  for (let candidate = port; ; candidate += 1) {
    const error = await tryPort(server, candidate);
    if (!error) return;
    if (error.code !== 'EADDRINUSE' || candidate >= port + 100) throw error;
  }
}

function tryPort(server: Server, port: number): Promise<NodeJS.ErrnoException | null> {
  return new Promise((resolve) => {
    // Both are taken off again: with eleven ports taken Node would warn of as many that wait.
    const tell = (error: NodeJS.ErrnoException | null): void => {
      server.off('error', tell).off('listening', listens);
      resolve(error);
    };
    const listens = (): void => tell(null);
    server.once('error', tell).once('listening', listens).listen({ port, host: '127.0.0.1' });
  });
}

async function answer(place: Place, request: IncomingMessage, response: ServerResponse): Promise<void> {
  if (request.method !== 'GET' && request.method !== 'HEAD') return refuse(response, 405);
  const asked = pathOf(request.url ?? '/');
  if (asked === null) return refuse(response, 400);
  if (!asked.startsWith(place.under)) return refuse(response, 404);

  const file = path.resolve(place.folder, `./${asked.slice(place.under.length)}`);
  // Outside the folder: a separator of this system that is none in an address.
  if (path.relative(place.folder, file).startsWith('..')) return refuse(response, 404);

  const found = await stat(file).catch(() => null);
  // A folder asked for without its slash: relative links would go astray.
  if (found?.isDirectory() && !asked.endsWith('/')) {
    response.writeHead(308, { location: `${encodeURI(asked)}/` }).end();
    return;
  }
  if (found?.isDirectory()) return sendOrMissing(place, path.join(file, 'index.html'), request, response);
  return sendOrMissing(place, file, request, response);
}

/** The path of a request, decoded and without steps upward; null when it cannot be read. */
function pathOf(url: string): string | null {
  try {
    return path.posix.normalize(decodeURIComponent(new URL(url, 'http://localhost').pathname));
  } catch {
    return null;
  }
}

async function sendOrMissing(
  place: Place,
  file: string,
  request: IncomingMessage,
  response: ServerResponse,
): Promise<void> {
  if ((await stat(file).catch(() => null))?.isFile()) return send(file, 200, request, response);
  const missing = path.join(place.folder, '404.html');
  if ((await stat(missing).catch(() => null))?.isFile()) return send(missing, 404, request, response);
  return refuse(response, 404);
}

async function send(file: string, status: number, request: IncomingMessage, response: ServerResponse): Promise<void> {
  const type = TYPES[path.extname(file)] ?? 'application/octet-stream';
  const zip =
    /^(text|application\/(json|xml))|svg/.test(type) && /\bgzip\b/.test(request.headers['accept-encoding'] ?? '');
  response.writeHead(status, {
    'content-type': type,
    'cache-control': 'no-cache',
    'x-content-type-options': 'nosniff',
    'referrer-policy': 'no-referrer',
    'content-security-policy': "frame-ancestors 'self'",
    vary: 'accept-encoding',
    ...(zip ? { 'content-encoding': 'gzip' } : {}),
  });
  if (request.method === 'HEAD') {
    response.end();
    return;
  }
  await (zip ? pipeline(createReadStream(file), createGzip(), response) : pipeline(createReadStream(file), response));
}

function refuse(response: ServerResponse, status: number): void {
  response.writeHead(status, { 'content-type': 'text/plain; charset=utf-8' }).end(`${status}\n`);
}
