import { createServer, type ServerResponse } from 'node:http';
import type { AddressInfo } from 'node:net';

/** The site as it comes over a slow line: pages arrive in pieces, everything else at once. */
export interface Trickle {
  /** Where it is served. */
  readonly address: string;
  readonly close: () => void;
}

/** How many pieces a page comes in, and how long one takes, ms: longer than a screen takes to be painted. */
const PIECES = 30;
const WAIT = 40;

/** Serves a site again, slowly. Close it after use. */
export async function trickle(site: string): Promise<Trickle> {
  const server = createServer(async ({ url = '/' }, response) => {
    const answer = await fetch(new URL(url, site));
    const type = answer.headers.get('content-type') ?? '';
    const body = Buffer.from(await answer.arrayBuffer());
    response.writeHead(answer.status, { 'content-type': type });
    if (type.startsWith('text/html')) await slowly(response, body);
    response.end(type.startsWith('text/html') ? undefined : body);
  });
  await new Promise<void>((resolve) => {
    server.listen(0, '127.0.0.1', resolve);
  });
  const { port } = server.address() as AddressInfo;
  return {
    address: `http://127.0.0.1:${port}`,
    close: () => {
      server.closeAllConnections();
      server.close();
    },
  };
}

async function slowly(response: ServerResponse, body: Buffer): Promise<void> {
  const size = Math.ceil(body.length / PIECES);
  for (let at = 0; at < body.length; at += size) {
    response.write(body.subarray(at, at + size));
    await new Promise((resolve) => {
      setTimeout(resolve, WAIT);
    });
  }
}
