import path from 'node:path';

/** The folder that holds package.json. */
export const ROOT = path.resolve(import.meta.dirname, '../..');

/** Where the built site lies. */
export const SITE = path.resolve(ROOT, process.env.SITE_OUT ?? 'dist');

/** Builds the site into `SITE`. Astro sends nothing home: its telemetry is off before it is loaded. */
export async function buildSite(): Promise<void> {
  const astro = await quietAstro();
  await astro.build({ root: ROOT, logLevel: 'warn' });
}

/** Writes the types of the content collections, which the compiler needs. */
export async function syncTypes(): Promise<void> {
  const astro = await quietAstro();
  await astro.sync({ root: ROOT, logLevel: 'warn' });
}

function quietAstro(): Promise<typeof import('astro')> {
  process.env.ASTRO_TELEMETRY_DISABLED = '1';
  return import('astro');
}
