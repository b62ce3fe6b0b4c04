import { AxeBuilder } from '@axe-core/playwright';
import { expect, type Page } from '@playwright/test';

/** The rules of WCAG 2.2, levels A and AA, as axe-core tags them. */
const TAGS = ['wcag2a', 'wcag2aa', 'wcag21a', 'wcag21aa', 'wcag22aa'];

/** Expects axe to find nothing on the page as it stands. What it finds is told by rule and element. */
export async function axe(page: Page): Promise<void> {
  // No page has a frame, so axe runs in the page itself: the other way opens a second page for every look. Elements are
  // named only where something is wrong.
  const look = new AxeBuilder({ page }).options({ resultTypes: ['violations'] }).withTags(TAGS);
  const { violations } = await look.setLegacyMode().analyze();
  const told = violations.flatMap(({ id, help, nodes }) => nodes.map(({ target }) => `${id} (${help}): ${target}`));
  expect(told).toEqual([]);
}
