import { loadExercise } from '../../src/cli/exercises.ts';
import type { GradeRow } from '../../src/exchange/grade-row.ts';
import { byOtherTools } from '../grader/alternative-collars.ts';
import { axe, expect, type Page, test } from './fixture.ts';
import { openDraft } from './table-draft.ts';
import { act, openTable } from './table-hand.ts';
import { makeSteps } from './table-steps.ts';

test('a whole collar is drawn from an empty sheet, to full marks', async ({ page }) => {
  test.slow();
  await openTable(page, 'collar-single');
  await expect(page.locator('.step')).toHaveCount(0);
  await makeSteps(page, 'collar-single', byOtherTools('single'));
  await act(page, 'check').click();
  await expect(page.getByRole('heading', { name: '79 of 79 marks' })).toBeFocused();
  await expect(page.locator('.report-right')).toHaveText('Everything is right.');
  await expect(page.locator('[data-target="others"]')).toContainText(/holds on all of them\.$/);
  await axe(page);
});

test('of a collar with three faults each is named, and nothing that follows from them is counted again', async ({
  page,
}) => {
  await openDraft(page, 'collar-single');
  // Folded over the wrong line, not swung, and as wide as the fall alone.
  await change(page, 'notch', 'over', 'centre front');
  await change(page, 'back-line', 'by', '0 mm');
  await change(page, 'outer-back', 'distance', 'fall');
  await act(page, 'check').click();
  await expect(page.getByRole('heading', { name: '65 of 79 marks' })).toBeFocused();
  const note = (target: string) => page.locator(`.note[data-target="${target}"]`);
  await expect(note('notch')).toContainText('You folded the notch over the centre front.');
  await expect(note('collar-centre-back')).toContainText('Your collar was not swung.');
  await expect(note('outer-edge')).toContainText('At the centre back you laid off the fall alone.');
  await expect(note('outer-edge')).toContainText('so those slips are not counted twice');
  await expect(page.locator('.note:not([data-status="within"])')).toHaveCount(3);
  const row = JSON.parse((await page.locator('.report').getAttribute('data-row')) ?? '') as Pick<GradeRow, 'checks'>;
  const lost = row.checks.filter(({ status }) => status !== 'within');
  expect(new Set(lost.map(({ target, misreading }) => `${target}: ${misreading}`))).toEqual(
    new Set(['notch: over-centre-front', 'collar-centre-back: not-swung', 'outer-edge: fall-only']),
  );
  await expect(page.locator('.sheet-words .words--red')).not.toHaveCount(0);
  await axe(page);
});

/** Changes a blank of a step of the reference where it stands in the working. */
async function change(page: Page, name: string, field: string, words: string): Promise<void> {
  const { reference } = loadExercise('collar-single');
  const step = page.locator('.step').nth(reference.findIndex((one) => one.name === name));
  await step.locator(`.blank-words[data-field="${field}"]`).click();
  await step.locator('.blank-input').fill(words);
  await page.keyboard.press('Enter');
  await expect(step.locator('.blank-input')).toHaveCount(0);
}
