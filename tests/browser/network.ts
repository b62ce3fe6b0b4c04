import type { BrowserContext, Page, Request } from '@playwright/test';

/** How long a page must ask for nothing to count as settled, ms, and have nothing to do besides. */
const QUIET = 100;

interface Traffic {
  readonly open: Set<Request>;
  lastChange: number;
}

const traffic = new WeakMap<BrowserContext, Traffic>();

/** Keeps count, from now on, of what the pages of the context ask for. */
export function followTraffic(context: BrowserContext): void {
  const seen: Traffic = { open: new Set(), lastChange: performance.now() };
  const asked = (request: Request): void => {
    seen.open.add(request);
    seen.lastChange = performance.now();
  };
  const answered = (request: Request): void => {
    seen.open.delete(request);
    seen.lastChange = performance.now();
  };
  context.on('request', asked);
  context.on('requestfinished', answered);
  context.on('requestfailed', answered);
  traffic.set(context, seen);
}

/**
 * Waits until nothing is being loaded, nothing has been for a while, and the page has nothing left to do that could ask for more:
 * a busy machine may take long from one to the next. Also long after the page was opened, which Playwright's own `networkidle`
 * does not notice.
 */
export async function settled(page: Page): Promise<void> {
  const seen = traffic.get(page.context());
  if (!seen) throw new Error('settled() needs the test of fixture.ts, which follows the traffic.');
  const isLoading = (): boolean => seen.open.size > 0 || performance.now() - seen.lastChange < QUIET;
  for (let idle = false; !idle; idle = !isLoading()) {
    while (isLoading()) await new Promise((resolve) => setTimeout(resolve, 25));
    await page.evaluate(() => new Promise((resolve) => requestIdleCallback(resolve)));
  }
}
