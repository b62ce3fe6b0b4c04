import { awakeAll, expect, moved, test } from './fixture.ts';

// The round of the site reads inches on every page of a phone; this is the desktop's layout, on a page of each kind.
for (const address of ['/', '/lessons/outer-edge/', '/exercises/collar-single/', '/desk/set/']) {
  test(`nothing moves on ${address} for a reader of inches, before or after it wakes`, async ({ page }) => {
    await page.addInitScript(() => localStorage.setItem('gorgeline.unit', 'in'));
    await page.goto(address);
    await awakeAll(page);
    expect(await moved(page)).toEqual([]);
  });
}
