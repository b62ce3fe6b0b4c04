import { expect, test } from './fixture.ts';
import { act, drawStep, openTable, rollLineSteps, spoken } from './table-hand.ts';

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
