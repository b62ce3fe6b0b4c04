import { host } from './host.ts';
import { buildSite, siteFolder } from './site.ts';

const FIRST_PORT = 4321;

console.log('Building the course …');
await buildSite();
const { server, address } = await host({ folder: siteFolder(), under: '/' }, Number(process.env.PORT ?? FIRST_PORT));
console.log(`The course is open at ${address}\nPress Ctrl+C to close it.`);
for (const signal of ['SIGINT', 'SIGTERM'] as const) {
  process.once(signal, () => {
    server.close();
    server.closeAllConnections();
  });
}
