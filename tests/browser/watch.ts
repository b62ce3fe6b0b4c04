import type { BrowserContext } from '@playwright/test';
import { followTraffic } from './network.ts';

const watched = new WeakMap<BrowserContext, readonly string[]>();

/**
 * Collects what goes wrong in every page of the context, from the first call on: a request that leaves the site (it is
 * stopped), an answer that is an error, an error in the console or thrown, a breach of the policy.
 */
export async function watch(context: BrowserContext, hostname: string): Promise<readonly string[]> {
  const known = watched.get(context);
  if (known) return known;
  const faults: string[] = [];
  watched.set(context, faults);
  followTraffic(context);
  await context.route(
    (url) => /^(?:https?|wss?):$/.test(url.protocol) && url.hostname !== hostname,
    async (route) => {
      faults.push(`a request left the site: ${route.request().url()}`);
      await route.abort();
    },
  );
  await context.addInitScript(reportBreaches);
  context.on('response', (response) => {
    if (response.status() >= 400) faults.push(`${response.status()} for ${response.url()}`);
  });
  context.on('console', (message) => {
    if (message.type() === 'error') faults.push(`console: ${message.text()}`);
  });
  context.on('weberror', (error) => faults.push(`thrown: ${error.error().stack ?? error.error().message}`));
  return faults;
}

/** Runs in the page: a breach of the policy becomes a console error that names the rule and the place. */
function reportBreaches(): void {
  document.addEventListener('securitypolicyviolation', (breach) => {
    const where = `${breach.sourceFile}:${breach.lineNumber}`;
    console.error(`policy ${breach.effectiveDirective} breached by ${breach.blockedURI} at ${where} ${breach.sample}`);
  });
}
