import type { Page } from '@playwright/test';
import { expect } from './fixture.ts';
import { act } from './table-hand.ts';

/** Goes on with Tab until the element is reached; a learner with a keyboard has no other way. */
export async function tabTo(page: Page, selector: string): Promise<void> {
  for (let presses = 0; presses < 80; presses++) {
    if (await page.evaluate((wanted) => document.activeElement?.matches(wanted) ?? false, selector)) return;
    await page.keyboard.press('Tab');
  }
  throw new Error(`${selector} is not reached by Tab.`);
}

/** Takes a tool from the table's edge with the arrow keys; the focus goes to its first blank. */
export async function take(page: Page, tool: string): Promise<void> {
  await page.keyboard.press('Control+Home');
  await page.locator('h1').evaluate((title) => {
    title.setAttribute('tabindex', '-1');
    title.focus();
  });
  await tabTo(page, '.tool');
  await page.keyboard.press('Home');
  for (let presses = 0; presses < 20; presses++) {
    if (await page.evaluate((id) => document.activeElement?.getAttribute('data-tool') === id, tool)) break;
    await page.keyboard.press('ArrowRight');
  }
  await page.keyboard.press('Enter');
  await expect(page.locator('.blank-input').first()).toBeFocused();
}

/** Fills the blank in focus: types, and takes what was typed or the first entry of the list. */
export async function fill(page: Page, text: string): Promise<void> {
  await page.keyboard.type(text);
  await page.keyboard.press('Enter');
}

/** Says what the step answers, and draws it. */
export async function draw(page: Page, answers: string | null): Promise<void> {
  await expect(act(page, 'draw')).toBeFocused();
  if (answers) {
    await page.keyboard.press('Shift+Tab');
    await page.keyboard.type(answers);
    await page.keyboard.press('Tab');
  }
  await page.keyboard.press('Enter');
}
