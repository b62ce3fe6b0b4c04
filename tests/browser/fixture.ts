import { type BrowserContext, test as base, type Page } from '@playwright/test';

export { expect } from '@playwright/test';
export { axe } from './axe.ts';
export { awakeAll, keepFiguresAsleep, layoutShift, scriptBytes } from './budget.ts';

interface Options {
  /** What a test means to provoke: console errors that match are not held against it. */
  expectedErrors: readonly RegExp[];
}

/**
 * The test of every browser test: it fails on a request that leaves the site (which is also stopped), on an answer that
 * is an error, on any error in the console or thrown in a page, and on any breach of the Content-Security-Policy.
 */
export const test = base.extend<Options & { quiet: undefined }>({
  expectedErrors: [[], { option: true }],
  quiet: [
    async ({ context, baseURL, expectedErrors }, use) => {
      const faults = await watch(context, new URL(baseURL ?? '').hostname);
      await use(undefined);
      const unexpected = faults.filter((fault) => !expectedErrors.some((pattern) => pattern.test(fault)));
      if (unexpected.length > 0) throw new Error(`The page was not quiet:\n${unexpected.join('\n')}`);
    },
    { auto: true },
  ],
});

/** Collects what goes wrong in every page of the context, from now on. */
async function watch(context: BrowserContext, hostname: string): Promise<readonly string[]> {
  const faults: string[] = [];
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

export type { Page };
