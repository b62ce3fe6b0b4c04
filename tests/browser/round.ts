import { host } from '../../src/cli/host.ts';
import { siteFolder } from '../../src/cli/site.ts';
import { type BrowserContext, test as base, type Page } from './fixture.ts';

interface Round {
  readonly context: BrowserContext;
  readonly page: Page;
}

/**
 * The test of a round of the site: one tab goes from page to page, as a reader does, and every test of a worker has it as
 * its `page`, since a browser takes longer over a new tab than over most pages. The site lies at a sub-path there, without
 * having been built for it: addresses are given from its root, `./lessons/`. On the phone its reader reads inches. What a test leaves switched on (a scheme, a
 * size of window) is switched off again; what it would leave in the storage is not, so a test of a round keeps nothing.
 */
export const test = base.extend<object, { round: Round }>({
  round: [
    async ({ browser }, use, { project }) => {
      const { server, address } = await host({ folder: siteFolder(), under: '/school/course/' }, 0);
      const { colorScheme, deviceScaleFactor, hasTouch, isMobile, locale, viewport } = project.use;
      const options = { colorScheme, deviceScaleFactor, hasTouch, isMobile, locale, viewport, baseURL: address };
      const stated = Object.entries(options).filter(([, value]) => value !== undefined);
      const context = await browser.newContext(Object.fromEntries(stated));
      // The built page shows centimetres until it knows better: whoever reads inches sees what is put right on waking.
      if (isMobile) await context.addInitScript(() => localStorage.setItem('gorgeline.unit', 'in'));
      await use({ context, page: await context.newPage() });
      await context.close();
      server.close();
    },
    { scope: 'worker' },
  ],
  context: ({ round }, use) => use(round.context),
  page: async ({ round: { page }, colorScheme, viewport }, use) => {
    await use(page);
    page.removeAllListeners('response');
    await page.emulateMedia({ colorScheme: colorScheme ?? null });
    if (viewport) await page.setViewportSize(viewport);
  },
});
