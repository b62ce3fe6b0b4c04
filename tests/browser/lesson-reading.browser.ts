import { axe, axeColours, expect, test } from './fixture.ts';

const LESSONS = ['overlap', 'break-point', 'roll-line'] as const;

test.describe('without scripting', () => {
  test.use({ javaScriptEnabled: false });

  for (const lesson of LESSONS) {
    test(`the lesson on ${lesson} reads, with its figures drawn and its reasons to open`, async ({ page }) => {
      await page.goto(`/lessons/${lesson}/`);
      await expect(page.getByRole('heading', { level: 1 })).toBeVisible();
      const figures = page.locator('.drawing');
      expect(await figures.count()).toBeGreaterThanOrEqual(6);
      for (const figure of await figures.all()) {
        expect(await figure.locator('.drawing-sheet path').count()).toBeGreaterThan(1);
        await expect(figure).toHaveAttribute('aria-label', /.{20}/);
      }
      const answer = page.locator('.answer').first();
      await answer.locator('summary').click();
      await expect(answer.locator('.answer-reason')).toBeVisible();
      // What only a script could do is away.
      await expect(page.locator('.unit-switch')).toBeHidden();
      await expect(page.locator('.live-help').first()).toBeHidden();
      await expect(page.getByText('I have read this lesson')).toBeHidden();
    });
  }
});

test.describe('a self-check', () => {
  test('gives a reason for each answer, one at a time, and counts what is right', async ({ page }) => {
    await page.goto('/lessons/overlap/');
    const question = page.getByRole('group', { name: 'A jacket is buttoned.' });
    const wrong = question.locator('.answer', { hasText: 'The edge of the under side.' });
    const right = question.locator('.answer', { hasText: 'The centre front of the under side.' });
    await wrong.locator('summary').click();
    await expect(wrong.locator('.answer-reason')).toContainText('No. Then the jacket would close an overlap too wide.');
    await expect(page.locator('.self-check-count')).toContainText('None of the 4 questions');
    await right.locator('summary').press('Enter');
    await expect(right.locator('.answer-reason')).toContainText('Yes. Centre front on centre front.');
    await expect(wrong.locator('.answer-reason')).toBeHidden();
    await expect(page.locator('.self-check-count')).toHaveText('1 of 4 questions answered right.');
  });

  test('with everything open holds to WCAG, in the dark too', async ({ page }) => {
    await page.goto('/lessons/overlap/');
    await page.locator('.answer').evaluateAll((all) => {
      for (const answer of all) answer.toggleAttribute('open', true);
    });
    await page.getByRole('button', { name: 'centre front' }).click();
    await axe(page);
    await page.emulateMedia({ colorScheme: 'dark' });
    await axeColours(page);
  });
});

test('a word of the trade opens its meaning by keyboard, and gives the focus back', async ({ page }) => {
  await page.goto('/lessons/break-point/');
  const word = page.getByRole('button', { name: 'break point', exact: true });
  await word.focus();
  await page.keyboard.press('Enter');
  const note = page.locator('#term-break-point');
  await expect(note).toBeVisible();
  await expect(note).toContainText('The point on the front edge where the lapel begins to turn back.');
  await page.keyboard.press('Escape');
  await expect(note).toBeHidden();
  await expect(word).toBeFocused();
  await word.click();
  await note.getByRole('link', { name: 'In the glossary' }).click();
  await expect(page).toHaveURL(/\/glossary\/#break-point$/);
  await expect(page.locator('#break-point')).toBeInViewport();
});

test('a source leads to the list at the foot of the lesson', async ({ page }) => {
  await page.goto('/lessons/roll-line/');
  await page.getByRole('link', { name: 'Rosenfeld 1918, p. 135' }).first().click();
  await expect(page.locator('#source-rosenfeld-1918')).toBeInViewport();
  await expect(page.locator('#source-rosenfeld-1918')).toContainText('The Practical Designer, 1918');
});

test('the keyboard’s first stop leads past the head to the text', async ({ page }) => {
  await page.goto('/lessons/overlap/');
  await page.keyboard.press('Tab');
  await expect(page.getByRole('link', { name: 'Skip to the text' })).toBeFocused();
  await page.keyboard.press('Enter');
  await expect(page.locator('main')).toBeFocused();
});

test.describe('on paper', () => {
  for (const lesson of LESSONS) {
    test(`the lesson on ${lesson} prints its text, its figures and every reason`, async ({ page }) => {
      await page.goto(`/lessons/${lesson}/`);
      await page.emulateMedia({ media: 'print' });
      await expect(page.locator('.top')).toBeHidden();
      await expect(page.locator('.lesson-foot')).toBeHidden();
      for (const reason of await page.locator('.answer-reason').all()) await expect(reason).toBeVisible();
      await expect(page.locator('.drawing').first()).toBeVisible();
      expect((await page.pdf()).length).toBeGreaterThan(20_000);
    });
  }

  test('a dark screen still prints in ink', async ({ page }) => {
    await page.goto('/lessons/overlap/');
    await page.emulateMedia({ media: 'print', colorScheme: 'dark' });
    const ink = await page.locator('main').evaluate((main) => getComputedStyle(main).color);
    expect(ink).toBe('rgb(0, 0, 0)');
  });
});
