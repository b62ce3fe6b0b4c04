import { expect, moved, test } from './fixture.ts';
import { act, awakeTable, drawStep, openTable, rollLineSteps, spoken } from './table-hand.ts';

test('a draft with a line that answers nothing is checked only after a reminder, which leads to the step', async ({
  page,
}) => {
  await openTable(page, 'roll-line');
  const [edge] = rollLineSteps();
  if (!edge) throw new Error('There is no first step.');
  await drawStep(page, { tool: edge.tool, does: edge.does });
  await act(page, 'check').click();
  await expect(page.locator('.reminder')).toContainText(
    'Nothing is pointed out as your overlap edge, break point, stand point and roll line yet.',
  );
  await expect(spoken(page)).toHaveText(/^Nothing is pointed out as your overlap edge/);
  await expect(page.locator('.report')).toHaveCount(0);

  await act(page, 'point-out').click();
  const answers = page.locator('.step-answers select');
  await expect(answers).toBeFocused();
  await expect(page.locator('.reminder')).toHaveCount(0);
  await answers.selectOption('overlap-edge');
  // What is left has nothing drawn that could be it: there is nothing to be reminded of.
  await act(page, 'check').click();
  await expect(page.locator('.report h2')).toHaveText('3 of 14 marks');
});

test('a target is dotted as answered only while its answer is drawn', async ({ page }) => {
  await openTable(page, 'roll-line');
  for (const step of rollLineSteps().slice(0, 3)) await drawStep(page, step);
  const answered = page.locator('.asks [data-answered="true"] dt');
  await expect(answered).toHaveText(['overlap edge', 'break point']);
  await page.getByRole('button', { name: 'Erase line 1' }).click();
  await expect(answered).toHaveText(['overlap edge']);
});

test('a draft is checked as it stands when one asks twice', async ({ page }) => {
  await openTable(page, 'roll-line');
  const [edge] = rollLineSteps();
  if (!edge) throw new Error('There is no first step.');
  await drawStep(page, { tool: edge.tool, does: edge.does });
  await act(page, 'check').click();
  await act(page, 'check').click();
  await expect(page.locator('.report h2')).toHaveText('0 of 14 marks');
});

test('a draft that lies as it was checked has its notes again when one comes back, and one that was changed since has none', async ({
  page,
}) => {
  await openTable(page, 'roll-line');
  for (const step of rollLineSteps('neck-point')) await drawStep(page, step);
  await act(page, 'check').click();
  const notes = await page.locator('.report').textContent();
  await page.reload();
  await awakeTable(page);
  await expect(page.locator('.report')).toHaveText(notes ?? '');
  // They are there, and nothing is made of it: neither does the page move, nor is it said that the draft was checked.
  await expect(page.locator('.report h2')).not.toBeFocused();
  await expect(spoken(page)).toHaveText('');
  expect(await moved(page)).toEqual([]);

  await page.locator('.step').last().locator('[data-do="erase"]').click();
  await expect(page.locator('.report-stale')).toBeVisible();
  await page.reload();
  await awakeTable(page);
  await expect(page.locator('.step')).toHaveCount(rollLineSteps().length - 1);
  await expect(page.locator('.report')).toHaveCount(0);
});

test('a draft checked from back in its working is checked, and shown, to its end', async ({ page }) => {
  await openTable(page, 'roll-line');
  for (const step of rollLineSteps()) await drawStep(page, step);
  for (let back = 0; back < 3; back += 1) await act(page, 'step-back').click();
  await expect(page.locator('.walk-place')).toHaveText('2 of 5');
  await act(page, 'check').click();
  await expect(page.locator('.walk-place')).toHaveText('5 of 5');
  await expect(page.locator('.report h2')).toHaveText('14 of 14 marks');
  await expect(spoken(page)).toHaveText(/You stood back in the working; all 5 steps were checked\.$/);
});
