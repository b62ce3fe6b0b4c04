import { expect, moved, type Page, test } from './fixture.ts';
import { awakeTable } from './table-hand.ts';
import { trickle } from './trickle.ts';

test('nothing moves while a page comes over a slow line', async ({ page, baseURL }) => {
  await slowlyOpened(page, baseURL ?? '');
});

test('nothing moves on a phone either', { tag: '@phone' }, async ({ page, baseURL }) => {
  await slowlyOpened(page, baseURL ?? '');
});

async function slowlyOpened(page: Page, site: string): Promise<void> {
  const slow = await trickle(site);
  try {
    await page.goto(`${slow.address}/exercises/break-point/`);
    await awakeTable(page);
    expect(await moved(page)).toEqual([]);
  } finally {
    slow.close();
  }
}
