import { spawnSync } from 'node:child_process';
import path from 'node:path';
import { host } from './host.ts';
import { siteFolder } from './site.ts';

const FIRST_PORT = 4321;

console.log('Building the course …');
// In a process of its own: what serves the site need not hold what built it.
const { status } = spawnSync(process.execPath, [path.join(import.meta.dirname, 'build.ts')], { stdio: 'inherit' });
if (status !== 0) process.exit(1);

const { server, address } = await host({ folder: siteFolder(), under: '/' }, Number(process.env.PORT ?? FIRST_PORT));
console.log(`The course is open at ${address}\nPress Ctrl+C to close it.`);
for (const signal of ['SIGINT', 'SIGTERM'] as const) {
  process.once(signal, () => {
    server.close();
    server.closeAllConnections();
  });
}
