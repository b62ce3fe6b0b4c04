import path from 'node:path';

/** The folder that holds package.json. */
export const ROOT = path.resolve(import.meta.dirname, '../..');

/** Where the built site lies: `dist`, or what the variable SITE_OUT names. */
export function siteFolder(): string {
  return path.resolve(ROOT, process.env.SITE_OUT ?? 'dist');
}

/** Builds the site into its folder. Astro sends nothing home: its telemetry is off before it is loaded. */
export async function buildSite(): Promise<void> {
  process.env.ASTRO_TELEMETRY_DISABLED = '1';
  const { build } = await import('astro');
  await build({ root: ROOT, logLevel: 'warn' });
}
