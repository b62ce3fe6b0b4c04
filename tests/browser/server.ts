import { host } from '../../src/cli/host.ts';
import { siteFolder } from '../../src/cli/site.ts';

/** Serves the built site for the browser tests, at the port that SITE_PORT names. */
const { address } = await host({ folder: siteFolder(), under: '/' }, Number(process.env.SITE_PORT));
console.log(address);
