import { axe, axeColours, expect, test } from './fixture.ts';
import { act, awakeTable, drawStep, openTable, rollLineSteps } from './table-hand.ts';

test('a draft made by names holds when a new figure is laid on the table, and the marks stay', async ({ page }) => {
  await openTable(page, 'roll-line');
  for (const step of rollLineSteps()) await drawStep(page, step);
  await page.locator('.setup summary').click();
  const body = page.locator('.measures', { hasText: 'front waist length' });
  const before = await body.textContent();
  await act(page, 'new-figure').click();
  await expect(body).not.toHaveText(before ?? '');
  await expect(page.locator('.step')).toHaveCount(5);
  await act(page, 'check').click();
  await expect(page.getByRole('heading', { name: '14 of 14 marks' })).toBeVisible();
  await page.getByLabel('Figure').selectOption('sione');
  await expect(page.locator('.brief-who')).toHaveText('For Sione');
  await act(page, 'check').click();
  await expect(page.getByRole('heading', { name: '14 of 14 marks' })).toBeVisible();
});

test('another figure is taken back by undo, and so are its marks', async ({ page }) => {
  await openTable(page, 'roll-line');
  const whose = await page.locator('.brief-who').textContent();
  for (const step of rollLineSteps().slice(0, 1)) await drawStep(page, step);
  await page.locator('.setup summary').click();
  await page.locator('.figure-choice select').selectOption('sione');
  await expect(page.locator('.brief-who')).toHaveText('For Sione');
  await act(page, 'check').click();
  await expect(page.locator('.report')).toHaveCount(1);
  await act(page, 'undo').click();
  await expect(page.locator('.brief-who')).toHaveText(whose ?? '');
  await expect(page.locator('.report')).toHaveCount(0);
  await expect(page.locator('.step')).toHaveCount(1);
  await page.reload();
  await awakeTable(page);
  await expect(page.locator('.brief-who')).toHaveText(whose ?? '');
});

test('one’s own measures are laid on the table, and a body that cannot be is refused with a reason', async ({
  page,
}) => {
  await openTable(page, 'roll-line');
  await page.locator('.setup summary').click();
  await page.getByLabel('Figure').selectOption('own');
  const neck = page.locator('.own-measures').getByLabel('neck-base girth');
  await neck.fill('9 cm');
  await page.getByRole('button', { name: 'Lay it on the table' }).click();
  await expect(page.locator('.own-measures .trouble')).toBeVisible();
  await axe(page);
  await neck.fill('41 cm');
  await page.getByRole('button', { name: 'Lay it on the table' }).click();
  await expect(page.locator('.brief-who')).toHaveText('For your own measures');
  await expect(page.locator('.measures', { hasText: 'neck-base girth' })).toContainText('41 cm');
  await page.reload();
  await awakeTable(page);
  await expect(page.locator('.measures', { hasText: 'neck-base girth' })).toContainText('41 cm');
});

test('a house rule and a strictness are chosen, and the marker follows them', async ({ page }) => {
  await openTable(page, 'roll-line');
  for (const step of rollLineSteps()) await drawStep(page, step);
  const rule = page.locator('.rules p');
  await expect(rule).toHaveText(
    'By the house rule on the order, the stand point lies the full stand past the neck point.',
  );
  await page.locator('.setup summary').click();
  await page.getByRole('radio', { name: /The stand less 0\.6\scm/ }).check();
  await expect(rule).toHaveText(/^By the house rule on the order, the stand point lies .*0\.6\scm/);
  await act(page, 'check').click();
  // The stand point was laid off by the rule’s name, so it follows the rule.
  await expect(page.getByRole('heading', { name: '14 of 14 marks' })).toBeVisible();
  await page.getByLabel('Strictness').selectOption('sample-room');
  await expect(page.locator('.report')).toHaveCount(0);
  await act(page, 'check').click();
  await expect(page.getByRole('heading', { name: '14 of 14 marks' })).toBeVisible();
});

test('hints come one by one, the right place only when asked for, and the unit turns every length and changes no mark', async ({
  page,
}) => {
  await openTable(page, 'roll-line');
  for (const step of rollLineSteps('neck-point')) await drawStep(page, step);
  await page.locator('.hints summary').click();
  const hint = page.locator('.hint').last();
  await expect(hint.locator('li')).toHaveCount(0);
  for (const count of [1, 2, 3]) {
    await hint.getByRole('button').click();
    await expect(hint.locator('li')).toHaveCount(count);
  }
  await expect(hint.getByRole('button')).toHaveCount(0);
  await act(page, 'check').click();
  await expect(page.locator('.sheet-board .ink--right')).toHaveCount(0);
  // Bands lie under the three answers that are right; the one that is not keeps its place to itself.
  await expect(page.locator('.sheet-board .band--right')).toHaveCount(3);
  await act(page, 'show-right').click();
  await expect(page.locator('.sheet-board .ink--right')).toHaveCount(1);
  await expect(page.locator('.sheet-board .band--right')).toHaveCount(4);
  await axe(page);
  await page.emulateMedia({ colorScheme: 'dark' });
  await axeColours(page);
  await page.emulateMedia({ colorScheme: null });
  await act(page, 'rub-out').click();
  await expect(page.locator('.sheet-board .ink--right')).toHaveCount(0);
  await expect(page.locator('.report')).toHaveCount(0);
  await expect(page.locator('.step')).toHaveCount(5);

  await act(page, 'check').click();
  const marks = await page.locator('#report-title').textContent();
  await page.getByRole('radio', { name: 'inches' }).check();
  await expect(
    page.locator('.measures', { hasText: 'stand by the house rule' }).getByText('1 1/4 in').first(),
  ).toBeVisible();
  await expect(page.locator('.step').first()).toContainText('overlap (1 in)');
  await expect(page.locator('.sheet-words .words--red').first()).toHaveText(/\sin$/);
  await expect(page.locator('.note[data-target="roll-line"]')).toContainText('1 1/4 in');
  await act(page, 'check').click();
  await expect(page.locator('#report-title')).toHaveText(marks ?? '');
});

test('the sheet, the working and the order print without what cannot be used on paper', async ({ page }) => {
  await openTable(page, 'roll-line');
  for (const step of rollLineSteps().slice(0, 2)) await drawStep(page, step);
  await page.emulateMedia({ media: 'print' });
  await expect(page.locator('.tools')).toBeHidden();
  await expect(page.locator('.sheet-bar')).toBeHidden();
  await expect(page.locator('.step').first()).toBeVisible();
  await expect(page.locator('.sheet-board svg')).toBeVisible();
});
