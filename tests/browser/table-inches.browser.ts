import { awakeAll, expect, moved, test } from './fixture.ts';
import { sitePages } from './site-pages.ts';

test('nothing moves on an exercise for a reader of inches, before or after its table wakes', async ({ page }) => {
  await page.addInitScript(() => localStorage.setItem('gorgeline.unit', 'in'));
  for (const address of sitePages().filter((one) => one.startsWith('/exercises/'))) {
    await page.goto(address);
    await awakeAll(page);
    expect(await moved(page), address).toEqual([]);
  }
});
