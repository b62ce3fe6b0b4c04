import { test as base } from '@playwright/test';
import { watch } from './watch.ts';

export { type BrowserContext, expect, type Page } from '@playwright/test';
export { axe, axeColours } from './axe.ts';
export { awakeAll, layoutShift, moved, openAsleep, scriptBytes, wakeFigures } from './budget.ts';
export { settled } from './network.ts';

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
      const before = faults.length;
      await use(undefined);
      const unexpected = faults.slice(before).filter((fault) => !expectedErrors.some((pattern) => pattern.test(fault)));
      if (unexpected.length > 0) throw new Error(`The page was not quiet:\n${unexpected.join('\n')}`);
    },
    { auto: true },
  ],
});
