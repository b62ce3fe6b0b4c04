import { awakeAll, expect, test } from './fixture.ts';

test.describe('the reader’s unit', () => {
  test('is chosen once, stays, and turns lengths in the text, the figures and the tape at the top', async ({
    page,
  }) => {
    await page.goto('/lessons/overlap/');
    const length = page.locator('main .len').first();
    await expect(length).toHaveText(/0\.3\scm \(1\/8\sin\)/);
    await expect(length.locator('.len-cm')).toBeVisible();
    await page.getByRole('radio', { name: 'inches' }).check();
    await expect(length.locator('.len-in')).toBeVisible();
    await expect(length.locator('.len-cm')).toBeHidden();
    await page.goto('/');
    await expect(page.getByRole('radio', { name: 'inches' })).toBeChecked();
    await awakeAll(page);
    await expect(page.locator('.live-says')).toContainText('1 1/2 in above the waist');
    await page.getByRole('radio', { name: 'cm' }).check();
    await expect(page.locator('.live-says')).toContainText('3.8 cm above the waist');
  });

  test('is kept for this visit where the browser keeps nothing', async ({ page }) => {
    await page.addInitScript(() => {
      Object.defineProperty(window, 'localStorage', {
        get: () => {
          throw new DOMException('denied', 'SecurityError');
        },
      });
    });
    await page.goto('/lessons/overlap/');
    await page.getByRole('radio', { name: 'inches' }).check();
    await expect(page.locator('main .len-in').first()).toBeVisible();
  });
});

test.describe('progress', () => {
  test('shows what was read, what is begun and the best marks, from this browser alone', async ({ page }) => {
    await page.goto('/lessons/');
    await expect(page.locator('.contents-read:visible')).toHaveCount(0);
    await page.goto('/lessons/overlap/');
    await page.getByRole('checkbox', { name: 'I have read this lesson' }).check();
    await page.evaluate(() => {
      localStorage.setItem('gorgeline.marks.overlap', '{"marks":5,"of":6}');
      localStorage.setItem('gorgeline.draft.overlap-button', '{}');
      localStorage.setItem('gorgeline.marks.break-point', 'not what was written');
    });
    await page.goto('/lessons/');
    const lesson = page.getByRole('listitem').filter({ has: page.getByRole('heading', { name: 'The overlap' }) });
    await expect(lesson.getByRole('heading', { level: 2 })).toHaveText(/The overlap\s+Read/);
    const line = (title: string) =>
      page.locator('.exercises li', { has: page.getByRole('link', { name: title, exact: true }) });
    await expect(line('Overlap edge, single-breasted')).toContainText('5 of 6 marks');
    await expect(line('Overlap from the button')).toContainText('Begun');
    // A damaged record is passed over.
    await expect(line('Break level and break point')).toContainText(/\d+ marks/);
    // The page of exercises shows the same, and the head leads there.
    await page.getByRole('navigation', { name: 'The course' }).getByRole('link', { name: 'Exercises' }).click();
    await expect(page.getByRole('heading', { level: 1 })).toHaveText('Exercises');
    await expect(line('Overlap edge, single-breasted')).toContainText('5 of 6 marks');
    await expect(line('Overlap from the button')).toContainText('Begun');
    await page.goto('/lessons/overlap/');
    await page.getByRole('checkbox', { name: 'I have read this lesson' }).uncheck();
    await page.goto('/lessons/');
    await expect(page.locator('.contents-read:visible')).toHaveCount(0);
  });
});

test('an address that leads nowhere says so, and leads back', async ({ page }) => {
  test.info().annotations.push({ type: 'provokes', description: 'an answer of 404' });
  const answer = await page.request.get('/nowhere/');
  expect(answer.status()).toBe(404);
  expect(await answer.text()).toContain('This page is not on the table');
});
