import { host } from '../../src/cli/host.ts';
import { siteFolder } from '../../src/cli/site.ts';
import { awakeAll, expect, test } from './fixture.ts';
import { sitePages } from './site-pages.ts';

test('the site works under a sub-path without being built again', async ({ page }) => {
  const { server, address } = await host({ folder: siteFolder(), under: '/school/course/' }, 0);
  try {
    for (const path of sitePages()) {
      // The fixture fails this on any answer that is an error: what is not found under the sub-path.
      await page.goto(address + path.slice(1));
      await awakeAll(page);
      const fonts = await page.evaluate(() =>
        Array.from(document.fonts, ({ family, status }) => `${family} ${status}`),
      );
      expect(fonts).toContain('Source Serif 4 loaded');
    }
  } finally {
    server.close();
  }
});
