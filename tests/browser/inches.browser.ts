import { awakeAll, expect, moved, type Page, test } from './fixture.ts';
import { sitePages } from './site-pages.ts';

// The round of the site reads inches on a phone; this is the desktop's layout.
const isExercise = (address: string): boolean => address.startsWith('/exercises/');

test('nothing moves on an exercise for a reader of inches, before or after its table wakes', async ({ page }) => {
  await goRound(page, sitePages().filter(isExercise));
});

test('nothing moves on any other page for a reader of inches, before or after its figures wake', async ({ page }) => {
  await goRound(
    page,
    sitePages().filter((address) => !isExercise(address)),
  );
});

async function goRound(page: Page, addresses: readonly string[]): Promise<void> {
  // So many pages, one after the other: a busy machine takes a minute for them.
  test.slow();
  await page.addInitScript(() => localStorage.setItem('gorgeline.unit', 'in'));
  for (const address of addresses) {
    await page.goto(address);
    await awakeAll(page);
    expect(await moved(page), address).toEqual([]);
  }
}
